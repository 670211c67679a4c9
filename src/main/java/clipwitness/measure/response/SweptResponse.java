package clipwitness.measure.response;

import clipwitness.capture.Samples;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Reason;
import clipwitness.reason.ResponseReason;
import clipwitness.signal.DiscreteSpectrum;
import clipwitness.signal.LocalPolynomial;
import clipwitness.signal.UsableBand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Response from one record of a sweep or of noise: twelve points an octave about 1 kHz, each from the bins within a twenty-fourth of an octave on either
 * side of it, or the thirteen nearest where that is more. A point with a coherence under 0.9, with an uncertainty above 3 dB, or where the input holds nothing, is refused. The estimate
 * is that of least squares in the output (H1): noise in the input makes it too low by the noise's share of the input's power.
 */
public final class SweptResponse {
    /** Points an octave. */
    public static final int PER_OCTAVE = 12;

    private static final double CENTRE = 1000;
    private static final double LOWEST = 20;
    private static final double HIGHEST = 20_000;

    private static final double LEAST_COHERENCE = 0.9;

    /** An input so much weaker than at its strongest, in power a bin, is no stimulus but its noise or the edge of a sweep: 60 dB. */
    private static final double LEAST_INPUT = 1e-6;

    /** An expanded uncertainty, dB, above which a gain says nothing: half or twice the power. */
    private static final double MOST_UNCERTAINTY = 3;

    /** Bins wider than this, an octave in all, no longer show a frequency. */
    private static final double WIDEST = 2;

    private final DiscreteSpectrum input;
    private final DiscreteSpectrum output;
    private final double bin;
    private final double strongest;

    private SweptResponse(DiscreteSpectrum input, DiscreteSpectrum output, double bin) {
        this.input = input;
        this.output = output;
        this.bin = bin;
        this.strongest = strongest(input);
    }

    /**
     * The points.
     *
     * @param input      input, without gaps
     * @param output     output, as long
     * @param sampleRate Hz
     */
    public static List<ResponsePoint> of(Samples input, Samples output, double sampleRate) {
        SweptResponse response =
                new SweptResponse(DiscreteSpectrum.of(input), DiscreteSpectrum.of(output), sampleRate / input.size());
        List<ResponsePoint> points = new ArrayList<>();
        double highest = Math.min(HIGHEST, UsableBand.HIGHEST_OVER_SAMPLE_RATE * sampleRate) * (1 + 1e-9);
        int first = (int) Math.ceil(PER_OCTAVE * Math.log(LOWEST / CENTRE) / Math.log(2));
        for (int k = first; frequency(k) <= highest; k++) {
            response.point(frequency(k)).ifPresent(points::add);
        }
        return points;
    }

    private static double frequency(int step) {
        return CENTRE * Math.pow(2, (double) step / PER_OCTAVE);
    }

    /** The point of a frequency; empty where the record is too short to show it. */
    private Optional<ResponsePoint> point(double frequency) {
        double centre = frequency / bin;
        double half = Math.max(
                centre * (Math.pow(2, 0.5 / PER_OCTAVE) - Math.pow(2, -0.5 / PER_OCTAVE)) / 2,
                (LocalPolynomial.FEWEST_BINS - 1) / 2.0);
        int from = (int) Math.ceil(centre - half);
        int to = (int) Math.max(Math.floor(centre + half), from + LocalPolynomial.FEWEST_BINS - 1);
        if (from < 1 || to >= input.size() || to > WIDEST * from) {
            return Optional.empty();
        }
        double mean = 0;
        for (int k = from; k <= to; k++) {
            mean += input.power(k) / (to - from + 1);
        }
        if (mean < LEAST_INPUT * strongest) {
            return Optional.of(refused(frequency, OptionalDouble.empty(), Reason.of(ResponseReason.NO_STIMULUS)));
        }
        return Optional.of(LocalPolynomial.at(input, output, from, to, centre)
                .map(local -> point(frequency, local))
                .orElseGet(() -> refused(frequency, OptionalDouble.empty(), Reason.of(ResponseReason.NO_STIMULUS))));
    }

    private static ResponsePoint point(double frequency, LocalPolynomial local) {
        double coherence = local.coherence();
        if (coherence < LEAST_COHERENCE) {
            return refused(
                    frequency,
                    OptionalDouble.of(coherence),
                    Reason.of(ResponseReason.LOW_COHERENCE, Argument.decimals(coherence, Unit.ONE, 2)));
        }
        double relative = local.uncertainty() / local.magnitude();
        Contribution gain = new Contribution(Source.NOISE, Decibels.PER_RELATIVE_AMPLITUDE * relative, local.freedom());
        if (gain.standardUncertainty() * Measured.COVERAGE_FACTOR > MOST_UNCERTAINTY) {
            return refused(frequency, OptionalDouble.of(coherence), Reason.of(ResponseReason.HIDDEN));
        }
        Contribution phase = new Contribution(Source.NOISE, Math.toDegrees(relative), local.freedom());
        return new ResponsePoint(
                frequency,
                Measured.of(Decibels.ofAmplitude(local.magnitude()), Unit.DECIBEL, gain),
                Measured.of(Math.toDegrees(local.phase()), Unit.DEGREE, phase),
                OptionalDouble.of(coherence));
    }

    private static ResponsePoint refused(double frequency, OptionalDouble coherence, Reason reason) {
        return new ResponsePoint(
                frequency, Measured.refused(Unit.DECIBEL, reason), Measured.refused(Unit.DEGREE, reason), coherence);
    }

    private static double strongest(DiscreteSpectrum spectrum) {
        double most = 0;
        for (int k = 1; k < spectrum.size(); k++) {
            most = Math.max(most, spectrum.power(k));
        }
        return most;
    }
}
