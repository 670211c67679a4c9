package clipwitness.report.build;

import clipwitness.compare.result.Decision;

/** The sign of each decision; all of them stand in the report's own face. */
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
