package clipwitness.measure;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Contributions to the uncertainty of one value, combined as independent (JCGM 100:2008, 5.1.2), and the coverage factor of their sum.
 *
 * <p>The effective degrees of freedom are those of Welch and Satterthwaite (JCGM 100:2008, G.4.1), u⁴ / sum of u_i⁴ / ν_i. Contributions of one source
 * rest on one estimate, so they count as one with the fewest degrees of freedom among them; at least one degree is left. The coverage factor
 * is Student's for 95.45 % (G.3.4): 2.00 for infinitely many degrees of freedom, 2.37 for 8, 13.97 for 1.
 */
public final class Budget {
    /** Share of a normal distribution within two standard deviations, erf(sqrt 2). */
    private static final double LEVEL_OF_CONFIDENCE = 0.954499736103642;

    private static final double OF_A_NORMAL_DISTRIBUTION = 2;

    /** Beyond so many degrees of freedom Student's factor is 2.000. */
    private static final double AS_GOOD_AS_INFINITE = 1e5;

    private static final int MOST_FACTORS = 10_000;
    private static final Map<Double, Double> FACTORS = new ConcurrentHashMap<>();

    private Budget() {}

    /** One contribution a source, those of equal source combined. */
    public static List<Contribution> bySource(Collection<Contribution> parts) {
        Map<Source, Contribution> combined = new EnumMap<>(Source.class);
        for (Contribution c : parts) {
            combined.merge(c.source(), c, Budget::combined);
        }
        return List.copyOf(combined.values());
    }

    private static Contribution combined(Contribution a, Contribution b) {
        double freedom = a.variance() == 0
                ? b.degreesOfFreedom()
                : b.variance() == 0 ? a.degreesOfFreedom() : Math.min(a.degreesOfFreedom(), b.degreesOfFreedom());
        return new Contribution(a.source(), Math.hypot(a.standardUncertainty(), b.standardUncertainty()), freedom);
    }

    /** Combined standard uncertainty. */
    public static double standardUncertainty(Collection<Contribution> parts) {
        double variance = 0;
        for (Contribution c : parts) {
            variance += c.variance();
        }
        return Math.sqrt(variance);
    }

    /** Effective degrees of freedom, 1 or more; infinite where no contribution has fewer. */
    public static double degreesOfFreedom(Collection<Contribution> parts) {
        if (areAllInfinite(parts)) {
            return Double.POSITIVE_INFINITY;
        }
        double variance = 0;
        double spread = 0;
        for (Contribution c : bySource(parts)) {
            variance += c.variance();
            spread += c.variance() * c.variance() / c.degreesOfFreedom();
        }
        return spread > 0 ? Math.max(1, variance * variance / spread) : Double.POSITIVE_INFINITY;
    }

    /** Whether no contribution was estimated from few figures. */
    private static boolean areAllInfinite(Collection<Contribution> parts) {
        for (Contribution c : parts) {
            if (c.degreesOfFreedom() < Double.POSITIVE_INFINITY) {
                return false;
            }
        }
        return true;
    }

    /** Factor from the combined standard uncertainty to the expanded one. */
    public static double coverageFactor(Collection<Contribution> parts) {
        double freedom = degreesOfFreedom(parts);
        return freedom < AS_GOOD_AS_INFINITE ? factor(freedom) : OF_A_NORMAL_DISTRIBUTION;
    }

    /** Student's factor; the same few degrees of freedom are asked for again and again, so they are kept, up to a number. */
    private static double factor(double freedom) {
        Double kept = FACTORS.get(freedom);
        if (kept != null) {
            return kept;
        }
        double factor = new TDistribution(null, freedom).inverseCumulativeProbability((1 + LEVEL_OF_CONFIDENCE) / 2);
        if (FACTORS.size() < MOST_FACTORS) {
            FACTORS.put(freedom, factor);
        }
        return factor;
    }
}
