package clipwitness.bench;

import clipwitness.capture.Samples;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * One period of a voltage in its steady state.
 *
 * @param frequency fundamental in Hz, above 0
 * @param points    voltage in V at even steps from the start of the period
 */
public record Cycle(double frequency, Samples points) {
    private static final int COUNT = 4096;

    /** Checks the frequency. */
    public Cycle {
        Objects.requireNonNull(points, "points");
        if (!(frequency > 0)) {
            throw new IllegalArgumentException("frequency must be above 0 Hz but is " + frequency);
        }
    }

    /** A sine of a frequency in Hz and a peak amplitude in V. */
    public static Cycle sine(double frequency, double amplitude) {
        double[] points = IntStream.range(0, COUNT)
                .mapToDouble(i -> amplitude * Math.sin(2 * Math.PI * i / COUNT))
                .toArray();
        return new Cycle(frequency, Samples.of(points));
    }

    /** Each point through a function. */
    public Cycle map(DoubleUnaryOperator function) {
        return new Cycle(frequency, points.map(function));
    }

    /** Voltage in V at a time in s from the start of a period, on the straight line between two points. */
    public double at(double time) {
        double periods = time * frequency;
        double place = (periods - Math.floor(periods)) * points.size();
        int index = (int) place;
        double here = points.at(index % points.size());
        return here + (points.at((index + 1) % points.size()) - here) * (place - index);
    }

    /** Largest distance from 0, in V. */
    public double peak() {
        return Math.max(points.maximum(), -points.minimum());
    }
}
