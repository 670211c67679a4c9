package clipwitness.figure.chart;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Round numbers for the marks of an axis. Decimal arithmetic, so that 3 x 0.1 is 0.3. */
final class Ticks {
    private static final BigDecimal[] LINEAR = {
        BigDecimal.ONE, BigDecimal.valueOf(2), BigDecimal.valueOf(5), BigDecimal.TEN
    };
    private static final int[] COARSE = {1, 3};
    private static final int[] FINE = {1, 2, 5};

    private Ticks() {}

    /**
     * Smallest step of 1, 2 or 5 times a power of ten that divides a span into at most so many parts.
     *
     * @param span above 0
     * @param most 1 or more
     */
    static BigDecimal step(double span, int most) {
        if (!(span > 0 && span < Double.POSITIVE_INFINITY)) { // NaN lands here too
            throw new IllegalArgumentException("an axis needs a span above 0 but has " + span);
        }
        double least = span / most * (1 - 1e-9);
        int exponent = (int) Math.floor(Math.log10(least));
        for (BigDecimal factor : LINEAR) {
            BigDecimal step = factor.scaleByPowerOfTen(exponent);
            if (step.doubleValue() >= least) {
                return step;
            }
        }
        throw new IllegalArgumentException("no step for a span of " + span);
    }

    /** The multiples of a step from low to high, both included. */
    static List<BigDecimal> multiples(BigDecimal step, double low, double high) {
        double slack = step.doubleValue() * 1e-6;
        BigDecimal n = whole((low - slack) / step.doubleValue(), RoundingMode.CEILING);
        BigDecimal last = whole((high + slack) / step.doubleValue(), RoundingMode.FLOOR);
        List<BigDecimal> ticks = new ArrayList<>();
        for (; n.compareTo(last) <= 0; n = n.add(BigDecimal.ONE)) {
            ticks.add(n.multiply(step));
        }
        return ticks;
    }

    /** The multiple of a step next below (or above) a value, or the value itself where it is one. */
    static BigDecimal outward(BigDecimal step, double value, RoundingMode mode) {
        double slack = mode == RoundingMode.FLOOR ? 1e-6 : -1e-6;
        return whole(value / step.doubleValue() + slack, mode).multiply(step);
    }

    private static BigDecimal whole(double number, RoundingMode mode) {
        return new BigDecimal(number, MathContext.DECIMAL64).setScale(0, mode);
    }

    /**
     * Marks of a logarithmic axis from low to high: 1, 3, 10, 30 where it spans more than a decade and a half, else 1, 2, 5, 10.
     *
     * @param low  above 0
     * @param high above low
     */
    static List<BigDecimal> logarithmic(double low, double high) {
        int[] mantissas = Math.log10(high / low) > 1.5 ? COARSE : FINE;
        List<BigDecimal> ticks = new ArrayList<>();
        for (int e = (int) Math.floor(Math.log10(low)); e <= Math.ceil(Math.log10(high)); e++) {
            for (int m : mantissas) {
                BigDecimal tick = BigDecimal.valueOf(m).scaleByPowerOfTen(e);
                if (tick.doubleValue() >= low * (1 - 1e-9) && tick.doubleValue() <= high * (1 + 1e-9)) {
                    ticks.add(tick);
                }
            }
        }
        return ticks;
    }
}
