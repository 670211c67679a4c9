package clipwitness.report.data;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Hint;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.words.Speech;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a batch says of a job that has a report.
 *
 * @param number      number of the report
 * @param comparisons its comparisons, in the sheet's order
 * @param hints       its hints
 */
public record JobSummary(String number, List<Compared> comparisons, List<Hinted> hints) {
    /** Copies what it is given. */
    public JobSummary {
        comparisons = List.copyOf(comparisons);
        hints = List.copyOf(hints);
    }

    /**
     * A comparison.
     *
     * @param state     state that was compared
     * @param against   state that it was compared with
     * @param described whether it was only to be described
     * @param verdict   verdict
     * @param tallies   how its items were decided, one entry a quantity
     */
    public record Compared(String state, String against, boolean described, Decision verdict, List<Tally> tallies) {
        /** Copies what it is given. */
        public Compared {
            tallies = List.copyOf(tallies);
        }

        /** Whether it was judged, and not only described. */
        public boolean judged() {
            return !described && verdict != Decision.DESCRIBED;
        }
    }

    /**
     * A hint.
     *
     * @param code  which
     * @param state state that it is about; empty where it is about none
     * @param text  what is seen and what to look for
     */
    public record Hinted(String code, String state, String text) {}

    /** The summary of results. */
    public static JobSummary of(JobResults results) {
        return new JobSummary(
                results.job().sheet().report().number(),
                results.comparisons().stream().map(JobSummary::compared).toList(),
                results.hints().stream().map(JobSummary::hinted).toList());
    }

    /** Whether a comparison failed or stayed undecided. */
    public boolean notPassed() {
        return comparisons.stream().anyMatch(c -> c.verdict == Decision.FAIL || c.verdict == Decision.UNDECIDED);
    }

    private static Compared compared(Comparison c) {
        Map<String, Tally> tallies = new LinkedHashMap<>();
        for (Item i : c.items()) {
            count(tallies, i.quantity().key(), i.decision());
        }
        return new Compared(
                c.to(), c.from(), c.intent() == Intent.DESCRIBED, c.verdict(), List.copyOf(tallies.values()));
    }

    /** Counts one item. */
    static void count(Map<String, Tally> tallies, String quantity, Decision decision) {
        tallies.merge(quantity, Tally.none(quantity).and(decision), (t, one) -> t.and(decision));
    }

    private static Hinted hinted(Hint h) {
        return new Hinted(h.code().code(), h.state().orElse(""), Speech.ENGLISH.text(h.text()));
    }
}
