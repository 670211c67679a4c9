package clipwitness.job;

import java.util.Optional;

/**
 * A picture.
 *
 * @param file    path relative to the job folder
 * @param caption caption, empty where the sheet has none
 * @param state   state that it shows
 */
public record Photo(String file, String caption, Optional<String> state) {}
