package clipwitness.measure;

import java.util.Locale;

/** Counts how many of the stated intervals, k = 2, hold the truth, and how far the values lie from it. */
final class Tally {
    private int held;
    private int count;
    private int bounds;
    private double errors;
    private double squares;
    private double uncertainties;

    /** A refusal states no interval; an upper bound states one from 0. */
    void add(Measured measured, double truth) {
        measured.asValue().ifPresent(value -> {
            double uncertainty = value.standardUncertainty();
            double error = value.number() - truth;
            boolean below = error >= -2 * uncertainty;
            boolean above = value.isUpperBound() || error <= 2 * uncertainty;
            held += below && above ? 1 : 0;
            count++;
            bounds += value.isUpperBound() ? 1 : 0;
            errors += error;
            squares += error * error;
            uncertainties += uncertainty;
        });
    }

    int count() {
        return count;
    }

    /** Share of the intervals that hold the truth, in percent. */
    double share() {
        return 100.0 * held / count;
    }

    /** Share of them that may hold the truth, in percent: of intervals so many, of upper bounds, which are one-sided, all. */
    double most(double ofIntervals) {
        return (ofIntervals * (count - bounds) + 100.0 * bounds) / count;
    }

    /** Standard deviation of the errors over the mean standard uncertainty: 1 where that is right and errors are normal. */
    double scatter() {
        double mean = errors / count;
        return Math.sqrt(squares / count - mean * mean) / (uncertainties / count);
    }

    /** Share, then mean and standard deviation of the errors over the mean standard uncertainty. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "%5.1f %% (bias %.2f, scatter %.2f u)", share(), errors / uncertainties, scatter());
    }
}
