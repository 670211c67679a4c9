package clipwitness.report.build;

import clipwitness.compare.result.Decision;

/** The sign of each decision; the report's own typeface has all of them. */
final class Signs {
    private Signs() {}

    static String of(Decision decision) {
        return switch (decision) {
            case PASS -> "✓";
            case FAIL -> "✗";
            case UNDECIDED -> "?";
            case DESCRIBED -> "–";
        };
    }
}
