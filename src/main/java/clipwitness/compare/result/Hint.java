package clipwitness.compare.result;

import clipwitness.reason.HintCode;
import clipwitness.reason.Remark;
import java.util.Optional;

/**
 * Figures that look like a known fault. Never a verdict.
 *
 * @param code     which
 * @param state    state that it concerns
 * @param text     what is seen and what to look for
 * @param evidence the figures behind it
 */
public record Hint(HintCode code, Optional<String> state, Remark text, Remark evidence) {}
