package clipwitness.figure.chart;

/** Where a value lies along an axis. */
public sealed interface Scale {
    /** Value at the axis' beginning. */
    double low();

    /** Value at the axis' end; above {@link #low()}. */
    double high();

    /** Share of the axis' length at which a value lies: 0 at the beginning, 1 at the end, beyond these outside the axis. */
    double share(double value);

    /**
     * Equal steps for equal differences.
     *
     * @param low  beginning
     * @param high end, above low
     */
    record Linear(double low, double high) implements Scale {
        /** Checks the order. */
        public Linear {
            checkOrder(low, high);
        }

        @Override
        public double share(double value) {
            return (value - low) / (high - low);
        }
    }

    /**
     * Equal steps for equal ratios.
     *
     * @param low  beginning, above 0
     * @param high end, above low
     */
    record Logarithmic(double low, double high) implements Scale {
        /** Checks the order. */
        public Logarithmic {
            checkOrder(low, high);
            if (!(low > 0)) {
                throw new IllegalArgumentException("a logarithmic scale begins above 0, not at " + low);
            }
        }

        @Override
        public double share(double value) {
            return Math.log(value / low) / Math.log(high / low);
        }
    }

    private static void checkOrder(double low, double high) {
        if (!(low < high && high - low < Double.POSITIVE_INFINITY)) { // NaN lands here too
            throw new IllegalArgumentException("a scale needs low < high but has " + low + " and " + high);
        }
    }
}
