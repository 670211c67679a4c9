package clipwitness.measure;

import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import java.util.List;

/**
 * What the tone leaves of a wave: distortion, a harmonic, a gap. It is a size, 0 or more, so where it does not exceed its expanded uncertainty, or
 * a level in dBc three standard uncertainties of its amplitude, it is an upper bound, whatever the uncertainty comes from.
 */
public final class Residue {
    private Residue() {}

    /**
     * A residue with more contributions. A level that is lost in them is combined as an amplitude, where its noise and they are independent, and
     * then put in dB: to first order a level near nothing would have any uncertainty.
     *
     * @param figure        the figure; a refusal stays one
     * @param contributions in its unit, for a level to first order
     */
    public static Measured plus(Measured figure, List<Contribution> contributions) {
        return contributions.isEmpty()
                ? figure
                : figure.asValue()
                        .map(v -> (Measured) (v.unit() == Unit.DBC ? level(v, contributions) : size(v, contributions)))
                        .orElse(figure);
    }

    private static Measured.Value size(Measured.Value size, List<Contribution> contributions) {
        return size.plus(contributions).orUpperBound();
    }

    private static Measured.Value level(Measured.Value level, List<Contribution> contributions) {
        Measured.Value plain = level.plus(contributions);
        if (!level.isUpperBound() && !plain.orBoundOfLevel().isUpperBound()) {
            return plain;
        }
        double own = Decibels.toAmplitude(level.expanded()) - 1;
        double added = Budget.coverageFactor(contributions)
                * Budget.standardUncertainty(contributions)
                / Decibels.PER_RELATIVE_AMPLITUDE;
        double expanded = Decibels.ofAmplitude(1 + Math.hypot(own, added));
        List<Contribution> budget = plain.budget().stream()
                .map(c -> c.times(expanded / plain.expanded()))
                .toList();
        return new Measured.Value(level.number(), level.unit(), budget, true);
    }
}
