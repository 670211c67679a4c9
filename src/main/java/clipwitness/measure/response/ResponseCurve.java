package clipwitness.measure.response;

import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import clipwitness.reason.Reason;
import clipwitness.reason.ResponseReason;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Gain over frequency.
 *
 * @param points points, their frequencies rising
 */
public record ResponseCurve(List<ResponsePoint> points) {
    /** Half of the power, 10 lg 2 dB. */
    private static final double HALF_POWER = 10 * Math.log10(2);

    /** Points farther apart than this have nothing between them that one could read off, in octaves. */
    private static final double WIDEST_STEP = 1.1;

    /** Two frequencies are one where they differ by less: a tenth of the closest spacing of a sweep. */
    private static final double SAME = 0.005;

    /** Sorts what it is given. */
    public ResponseCurve {
        points = points.stream()
                .sorted(Comparator.comparingDouble(ResponsePoint::frequency))
                .toList();
    }

    /** The points that have a gain. */
    public List<ResponsePoint> measured() {
        return points.stream().filter(p -> p.gain().asValue().isPresent()).toList();
    }

    /** The point of a frequency, where there is one. */
    public Optional<ResponsePoint> at(double frequency) {
        return points.stream()
                .filter(p -> Math.abs(p.frequency() / frequency - 1) < SAME)
                .findFirst();
    }

    /**
     * Gain at a frequency, dB, on a straight line over the logarithm of the frequency between the two points about it; empty outside the points, and
     * between points more than an octave apart. Half of the step between the points counts as a bound on what such a line misses.
     */
    public Optional<Measured.Value> gainAt(double frequency) {
        Optional<Measured.Value> own = at(frequency).flatMap(p -> p.gain().asValue());
        if (own.isPresent()) {
            return own;
        }
        List<ResponsePoint> known = measured();
        for (int i = 1; i < known.size(); i++) {
            ResponsePoint a = known.get(i - 1);
            ResponsePoint b = known.get(i);
            if (a.frequency() < frequency && frequency < b.frequency()) {
                return between(a, b, frequency);
            }
        }
        return Optional.empty();
    }

    private static Optional<Measured.Value> between(ResponsePoint a, ResponsePoint b, double frequency) {
        double octaves = octaves(a.frequency(), b.frequency());
        if (octaves > WIDEST_STEP) {
            return Optional.empty();
        }
        double share = octaves(a.frequency(), frequency) / octaves;
        Measured.Value low = a.gain().asValue().orElseThrow();
        Measured.Value high = b.gain().asValue().orElseThrow();
        double step = high.number() - low.number();
        List<Contribution> parts = new ArrayList<>();
        low.budget().forEach(c -> parts.add(c.times(1 - share)));
        high.budget().forEach(c -> parts.add(c.times(share)));
        parts.add(new Contribution(Source.METHOD, Math.abs(step) / 2 * 2 * Math.min(share, 1 - share) / Math.sqrt(3)));
        return Optional.of(new Measured.Value(low.number() + share * step, Unit.DECIBEL, parts, false));
    }

    private static double octaves(double low, double high) {
        return Math.log(high / low) / Math.log(2);
    }

    /** Highest gain, dB; empty where no point has one. */
    public Optional<Measured.Value> highest() {
        return measured().stream()
                .map(p -> p.gain().asValue().orElseThrow())
                .max(Comparator.comparingDouble(Measured.Value::number));
    }

    /** Frequency below the highest gain at which half of the power is left, Hz; refused where the curve does not fall so far. */
    public Measured lowerCorner() {
        return corner(-1);
    }

    /** Frequency above the highest gain at which half of the power is left, Hz; refused where the curve does not fall so far. */
    public Measured upperCorner() {
        return corner(1);
    }

    private Measured corner(int step) {
        List<ResponsePoint> known = measured();
        if (known.isEmpty()) {
            return Measured.refused(Unit.HERTZ, Reason.of(ResponseReason.NO_CORNER));
        }
        double top = highest().orElseThrow().number();
        int i = 0;
        while (gain(known.get(i)) < top) {
            i++;
        }
        double wanted = top - HALF_POWER;
        for (int k = i + step; k >= 0 && k < known.size(); k += step) {
            if (gain(known.get(k)) <= wanted) {
                return crossing(known.get(k - step), known.get(k), wanted);
            }
        }
        return Measured.refused(Unit.HERTZ, Reason.of(ResponseReason.NO_CORNER));
    }

    private static double gain(ResponsePoint point) {
        return point.gain().value().orElseThrow();
    }

    /** Where the line between two points passes a gain; its uncertainty is that of the gains over its slope, and a quarter of the step for what it misses. */
    private static Measured crossing(ResponsePoint above, ResponsePoint below, double wanted) {
        double share = (gain(above) - wanted) / (gain(above) - gain(below));
        double step = Math.log(below.frequency() / above.frequency());
        double frequency = above.frequency() * Math.exp(share * step);
        double perDecibel = Math.abs(frequency * step / (gain(above) - gain(below)));
        double noise = Math.max(
                above.gain().asValue().orElseThrow().standardUncertainty(),
                below.gain().asValue().orElseThrow().standardUncertainty());
        double missed = Math.abs(step) / 4 * 4 * share * (1 - share) * frequency / Math.sqrt(3);
        return Measured.of(
                frequency,
                Unit.HERTZ,
                new Contribution(Source.NOISE, noise * Math.sqrt(2) * perDecibel),
                new Contribution(Source.METHOD, missed));
    }
}
