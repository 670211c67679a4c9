package clipwitness.compare;

import clipwitness.compare.result.Hint;
import clipwitness.fixture.Said;
import java.util.Optional;

/** A hint in English. */
public record SaidHint(String code, Optional<String> state, String text, String evidence) {
    public static SaidHint of(Hint hint) {
        return new SaidHint(hint.code().code(), hint.state(), Said.hint(hint), Said.evidence(hint));
    }
}
