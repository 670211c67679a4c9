package clipwitness.report.model;

import java.util.List;

/**
 * One figure of a comparison with its decision.
 *
 * @param condition   condition
 * @param change      change with sign
 * @param uncertainty expanded uncertainty
 * @param unit        unit
 * @param limit       limit, empty where nothing was judged
 * @param probability probability that the true change lies within the limit, in percent, empty where nothing was judged
 * @param kind        pass, fail, undecided or described
 * @param sign        the decision's sign
 * @param word        the decision's word
 * @param budget      contributions to the uncertainty, largest first
 * @param shares      their shares of the variance, the same order; those too small to be seen are left out
 * @param note        why there is no figure, or what would decide it
 */
public record ListedDecision(
        String condition,
        String change,
        String uncertainty,
        String unit,
        String limit,
        String probability,
        String kind,
        String sign,
        String word,
        String budget,
        List<Share> shares,
        String note) {
    /** Copies what it is given. */
    public ListedDecision {
        shares = List.copyOf(shares);
    }

    /**
     * One piece of the bar that shows the contributions.
     *
     * @param place   place in the order, from 1
     * @param percent percent of the bar
     */
    public record Share(String place, String percent) {}
}
