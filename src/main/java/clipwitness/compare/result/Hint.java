package clipwitness.compare.result;

import java.util.Optional;

/**
 * Figures that look like a known fault. Never a verdict.
 *
 * @param code     which
 * @param state    state that it concerns
 * @param text     a sentence for the report
 * @param evidence the figures behind it
 */
public record Hint(String code, Optional<String> state, String text, String evidence) {}
