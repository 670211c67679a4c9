package clipwitness.measure.response;

import clipwitness.capture.Samples;
import clipwitness.capture.VerticalRange;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Reason;
import clipwitness.reason.ResponseReason;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Measures captures of the frequency response. */
public final class ResponseMeasurement {
    /** Distortion above which a steady sine is said to be clipped, percent: as much as a generator may have (measurement book, section 1). */
    private static final double CLIPPED_PERCENT = 1;

    /** Share of the output's power that the input does not explain in the middle of a sweep: as much as 10 % of distortion or noise. */
    private static final double NOT_LINEAR = 0.01;

    /** Samples without a value over those of a record, above which no spectrum is made. */
    private static final double MOST_GAPS = 0.01;

    private ResponseMeasurement() {}

    /**
     * One steady sine: gain and phase of its wave. Without an input channel the level of the generator takes the place of the input.
     *
     * @param wave      what was measured of the wave
     * @param frequency of the sine, Hz
     * @param level     level of the generator as the sheet states it, V peak
     */
    public static ResponseResult ofSine(WaveformResult wave, double frequency, OptionalDouble level) {
        Measured gain = wave.values().containsKey(WaveformQuantity.GAIN)
                ? wave.get(WaveformQuantity.GAIN)
                : overGenerator(wave.get(WaveformQuantity.FUNDAMENTAL), level);
        ResponsePoint point =
                new ResponsePoint(frequency, gain, wave.get(WaveformQuantity.PHASE), OptionalDouble.empty());
        List<Doubt> doubts = new ArrayList<>(wave.doubts());
        doubts.removeIf(ResponseMeasurement::isAboutHarmonics);
        wave.get(WaveformQuantity.THD)
                .asValue()
                .filter(t -> t.number() - t.expanded() > CLIPPED_PERCENT)
                .ifPresent(t -> doubts.add(Doubt.of(
                        Severity.WARNING,
                        DoubtReason.RESPONSE_CLIPPED,
                        Argument.significant(t.number(), Unit.PERCENT, 2))));
        Measured input = wave.get(WaveformQuantity.INPUT_FUNDAMENTAL);
        boolean refused = doubts.stream().anyMatch(Doubt::refuses);
        return new ResponseResult(refused ? List.of() : List.of(point), false, input.value(), wave.range(), doubts);
    }

    /** Whether a doubt says only that harmonics are missing, of which a response needs none. */
    private static boolean isAboutHarmonics(Doubt doubt) {
        return doubt.code() == DoubtCode.UNDERSAMPLED && !doubt.refuses();
    }

    private static Measured overGenerator(Measured fundamental, OptionalDouble level) {
        Optional<Measured.Value> value = fundamental.asValue();
        if (value.isEmpty() || level.isEmpty() || !(value.get().number() > 0)) {
            return Measured.refused(
                    Unit.DECIBEL,
                    fundamental.reason().orElseGet(() -> Reason.of(ResponseReason.NO_INPUT_FOR_RESPONSE)));
        }
        double volts = value.get().number();
        return new Measured.Value(
                Decibels.ofAmplitude(volts / level.getAsDouble()),
                Unit.DECIBEL,
                value.get().budget().stream()
                        .map(c -> c.times(Decibels.PER_RELATIVE_AMPLITUDE / volts))
                        .toList(),
                false);
    }

    /** One sweep or record of noise. */
    public static ResponseResult ofSweep(WaveformInput record, VerticalRange range) {
        if (record.input().isEmpty()) {
            return refused(record, range, Reason.of(DoubtReason.NOT_COMPARABLE_RESPONSE_INPUT));
        }
        Samples input = record.input().get().samples();
        Samples output = record.output().samples();
        if (Math.max(input.gaps(), output.gaps()) > MOST_GAPS * input.size()) {
            return refused(record, range, Reason.of(DoubtReason.NOT_COMPARABLE_RESPONSE_GAPS));
        }
        List<ResponsePoint> points =
                SweptResponse.of(filled(input), filled(output), record.output().sampleRate());
        if (points.stream().allMatch(p -> p.gain().asValue().isEmpty())) {
            return refused(record, range, Reason.of(DoubtReason.NOT_COMPARABLE_RESPONSE_NONE));
        }
        return new ResponseResult(points, true, peak(input), range, notLinear(points));
    }

    /** A capture that is refused. */
    public static ResponseResult refused(WaveformInput record, VerticalRange range, Reason reason) {
        OptionalDouble peak =
                record.input().isPresent() ? peak(record.input().get().samples()) : OptionalDouble.empty();
        return new ResponseResult(List.of(), true, peak, range, List.of(new Doubt(Severity.REFUSAL, reason)));
    }

    private static OptionalDouble peak(Samples samples) {
        return OptionalDouble.of((samples.maximum() - samples.minimum()) / 2);
    }

    /** Single missing samples lie on the line between their neighbours. */
    private static Samples filled(Samples samples) {
        if (samples.gaps() == 0) {
            return samples;
        }
        double[] values = samples.toArray();
        double last = 0;
        for (int i = 0; i < values.length; i++) {
            values[i] = Double.isNaN(values[i]) ? last : values[i];
            last = values[i];
        }
        return Samples.adopted(values);
    }

    private static List<Doubt> notLinear(List<ResponsePoint> points) {
        List<Double> shares = points.stream()
                .filter(p -> p.gain().asValue().isPresent())
                .map(p -> 1 - p.coherence().orElse(1))
                .sorted(Comparator.naturalOrder())
                .toList();
        double middle = shares.get(shares.size() / 2);
        return middle > NOT_LINEAR
                ? List.of(Doubt.of(
                        Severity.WARNING,
                        DoubtReason.RESPONSE_NOT_LINEAR,
                        Argument.significant(100 * Math.sqrt(middle), Unit.PERCENT, 2)))
                : List.of();
    }
}
