package clipwitness.report.build;

import clipwitness.compare.result.Decision;

/** The sign of each decision; the report's own typeface has all of them. */
public final class Signs {
    private Signs() {}

    /** The sign of a decision. */
    public static String of(Decision decision) {
        return switch (decision) {
            case PASS -> "✓";
            case FAIL -> "✗";
            case UNDECIDED -> "?";
            case DESCRIBED -> "–";
        };
    }
}
