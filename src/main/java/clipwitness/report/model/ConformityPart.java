package clipwitness.report.model;

import java.util.List;

/**
 * The statement of conformity.
 *
 * @param statements what was judged, comparison by comparison
 * @param limits     limits with their basis; empty where nothing was judged
 * @param rule       the decision rule, sentence by sentence
 */
public record ConformityPart(List<String> statements, List<LimitText> limits, List<String> rule) {
    /** Copies what it is given. */
    public ConformityPart {
        statements = List.copyOf(statements);
        limits = List.copyOf(limits);
        rule = List.copyOf(rule);
    }

    /** The limits in two parts that end evenly, to stand side by side. */
    public List<List<LimitText>> halves() {
        return Parts.halves(limits);
    }

    /**
     * A limit.
     *
     * @param quantity what for
     * @param value    limit
     * @param basis    where it comes from
     */
    public record LimitText(String quantity, String value, String basis) {}
}
