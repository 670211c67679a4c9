package clipwitness.signal;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Mean and harmonics of one frequency over the samples of a record: the inner products of all pairs of them, plain and weighted with time.
 * Channels with the same gaps share one.
 *
 * @param solver     solver of the normal equations
 * @param timed      inner products weighted with u / N
 * @param timedTwice inner products weighted with (u / N)²
 */
record Basis(SmallCholesky solver, RealMatrix timed, RealMatrix timedTwice) {
    private static final double POSITIVE = 1e-13;

    Basis(FitSamples series, double cyclesPerSample, int orders) {
        this(new BasisSums(series, cyclesPerSample, 2 * orders), orders);
    }

    private Basis(BasisSums sums, int orders) {
        this(
                new SmallCholesky(sums.innerProducts(0, orders), POSITIVE),
                matrix(sums, 1, orders),
                matrix(sums, 2, orders));
    }

    private static RealMatrix matrix(BasisSums sums, int power, int orders) {
        return new Array2DRowRealMatrix(sums.innerProducts(power, orders), false);
    }
}
