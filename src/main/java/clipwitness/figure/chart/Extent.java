package clipwitness.figure.chart;

import clipwitness.capture.Samples;
import java.util.Collection;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Smallest and largest of some values.
 *
 * @param low  smallest
 * @param high largest, not below low
 */
public record Extent(double low, double high) {
    /** Checks the order. */
    public Extent {
        if (!(low <= high)) { // NaN lands here too
            throw new IllegalArgumentException("a range needs low <= high but has " + low + " and " + high);
        }
    }

    /**
     * The range of some values.
     *
     * @throws IllegalArgumentException if there are none
     */
    public static Extent of(DoubleStream values) {
        double[] all = values.toArray();
        OptionalDouble low = DoubleStream.of(all).min();
        OptionalDouble high = DoubleStream.of(all).max();
        return new Extent(
                low.orElseThrow(() -> new IllegalArgumentException("no values")),
                high.orElseThrow(() -> new IllegalArgumentException("no values")));
    }

    /**
     * The range of all samples of some.
     *
     * @throws IllegalArgumentException if there are none
     */
    public static Extent ofAll(Stream<Samples> samples) {
        return of(samples.flatMapToDouble(s -> DoubleStream.of(s.minimum(), s.maximum())));
    }

    /** The range that holds some ranges. */
    public static Extent over(Collection<Extent> ranges) {
        return of(ranges.stream().flatMapToDouble(r -> DoubleStream.of(r.low, r.high)));
    }

    double span() {
        return high - low;
    }

    double middle() {
        return (low + high) / 2;
    }

    /** Largest distance from zero. */
    double magnitude() {
        return Math.max(Math.abs(low), Math.abs(high));
    }

    /** The same range where it spans at least so much, else one of that span about the same middle; never of no span. */
    public Extent widened(double least) {
        double wanted = least > 0 ? least : 1;
        return span() >= wanted ? this : new Extent(middle() - wanted / 2, middle() + wanted / 2);
    }

    /** The range with a share of its span added at both ends. */
    public Extent padded(double share) {
        return new Extent(low - share * span(), high + share * span());
    }

    /** The value of the range that is nearest to a value. */
    public double nearest(double value) {
        return Math.max(low, Math.min(high, value));
    }

    /** The range and a value. */
    public Extent with(double value) {
        return new Extent(Math.min(low, value), Math.max(high, value));
    }
}
