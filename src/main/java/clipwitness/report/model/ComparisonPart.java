package clipwitness.report.model;

import java.util.List;

/**
 * A comparison in full.
 *
 * @param title        the two states
 * @param verdict      its verdict
 * @param quantities   decisions, quantity by quantity; empty where nothing was judged
 * @param described    changes that were not judged, conditions side by side
 * @param levelMatched harmonics at equal loudness, conditions side by side
 * @param equalGain    settings of equal distortion
 * @param clocks       how much faster one capture's clock saw the test tone than the other's, sentences
 * @param notExamined  what could not be looked at
 */
public record ComparisonPart(
        String title,
        Verdict verdict,
        List<QuantityPart> quantities,
        List<Table> described,
        List<Table> levelMatched,
        List<Table> equalGain,
        List<String> clocks,
        List<String> notExamined) {
    /** Copies what it is given. */
    public ComparisonPart {
        quantities = List.copyOf(quantities);
        described = List.copyOf(described);
        levelMatched = List.copyOf(levelMatched);
        equalGain = List.copyOf(equalGain);
        clocks = List.copyOf(clocks);
        notExamined = List.copyOf(notExamined);
    }

    /**
     * The decisions about one quantity.
     *
     * @param name      name
     * @param decisions decisions, condition by condition
     */
    public record QuantityPart(String name, List<ListedDecision> decisions) {
        /** Copies what it is given. */
        public QuantityPart {
            decisions = List.copyOf(decisions);
        }

        /** Rows that the quantity's name stands beside: a row for each decision, and one for each note. */
        public String span() {
            long notes = decisions.stream().filter(d -> !d.note().isEmpty()).count();
            return Long.toString(decisions.size() + notes);
        }
    }
}
