package clipwitness.report;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import clipwitness.job.Job;
import clipwitness.report.paper.Coverage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Warns of characters that the report cannot print; the report is made all the same, with the code in their place. */
public final class Unprintable {
    private Unprintable() {}

    /**
     * A warning for each text of the job that has such characters.
     *
     * @param job the job
     * @return warnings in the order of sheet and table; none where all can be printed
     */
    public static List<Problem> in(Job job) {
        Map<Origin, String> texts = SheetTexts.of(job);
        if (texts.values().stream().allMatch(Coverage::isPlain)) {
            return List.of();
        }
        List<Problem> warnings = new ArrayList<>();
        try (Coverage coverage = new Coverage()) {
            texts.forEach((where, text) -> {
                warning(where, coverage.missing(text), "no font of the report has ")
                        .ifPresent(warnings::add);
                warning(where, coverage.rightToLeft(text), "the report cannot set letters from right to left: ")
                        .ifPresent(warnings::add);
            });
        }
        return warnings;
    }

    private static Optional<Problem> warning(Origin where, List<String> characters, String what) {
        return characters.isEmpty()
                ? Optional.empty()
                : Optional.of(new Problem(
                        ErrorCode.NO_LETTERS,
                        where,
                        what + String.join(", ", characters) + "; the code is printed in place",
                        "Write it in Latin, Greek or Cyrillic letters"));
    }
}
