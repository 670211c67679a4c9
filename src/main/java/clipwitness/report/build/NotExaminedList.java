package clipwitness.report.build;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.NotExamined;
import clipwitness.quantity.ItemQuantity;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What could not be looked at, quantities with the same reason together, each quantity once. */
final class NotExaminedList {
    private final JobWording wording;

    NotExaminedList(JobWording wording) {
        this.wording = wording;
    }

    /** For some comparisons together; the first reason given for a quantity is the one that is said. */
    List<String> of(List<Comparison> comparisons) {
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        Set<ItemQuantity> seen = EnumSet.noneOf(ItemQuantity.class);
        for (Comparison comparison : comparisons) {
            for (NotExamined missing : comparison.notExamined()) {
                if (seen.add(missing.quantity())) {
                    byReason.computeIfAbsent(wording.reason(Optional.of(missing.reason())), k -> new ArrayList<>())
                            .add(wording.quantity(missing.quantity()));
                }
            }
        }
        return byReason.entrySet().stream()
                .map(e -> wording.say("notexamined", "quantity", wording.list(e.getValue()), "reason", e.getKey()))
                .toList();
    }
}
