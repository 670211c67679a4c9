package clipwitness.draft;

import clipwitness.draft.name.Guess;
import clipwitness.job.Role;
import java.util.Optional;

/**
 * A state of the drafted sheet.
 *
 * @param name    on the sheet and in the table
 * @param label   in the report
 * @param role    what it is for, empty where the names do not tell it
 * @param against the state before that it is compared with, where there are several
 * @param doubt   a question about a role that is only likely, empty where there is none
 */
public record DraftState(
        String name, String label, Optional<Guess<Role>> role, Optional<String> against, Optional<String> doubt) {}
