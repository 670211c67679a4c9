package clipwitness.measure.capture;

import clipwitness.capture.Samples;
import clipwitness.measure.ListeningFigure;
import clipwitness.measure.ListeningResult;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.signal.CodeStep;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Length and level of a recording of playing. They say what was recorded, so that it can be told from another recording; music is not
 * steady, so nothing about the unit follows from them. Rounding to a converter's step moves the rms of a record by no more than the rms of
 * what was rounded off (triangle inequality), step / sqrt 12, and so it does the peak.
 */
public final class ListeningMeasurement {
    /** For records that show no step: that of the coarsest sound files that are read, 16 bit, over full scale. */
    private static final double STEP_OF_SOUND = 0x1p-15;

    /** For those without full scale: numbers with a significand of 24 bits (IEEE 754-2019, table 3.5). */
    private static final double ROUNDED = 0x1p-24;

    private final ListeningInput input;
    private final Loudness loudness;
    private final Map<ListeningFigure, Measured> values = new EnumMap<>(ListeningFigure.class);

    private ListeningMeasurement(ListeningInput input, Loudness loudness) {
        this.input = input;
        this.loudness = loudness;
    }

    /**
     * What a recording is.
     *
     * @param channels its channels, at least one
     */
    public static ListeningResult of(List<ListeningInput> channels) {
        List<Loudness> loudnesses =
                channels.stream().map(c -> Loudness.of(c.wave().samples())).toList();
        int loudest = IntStream.range(0, channels.size())
                .boxed()
                .max(Comparator.comparingDouble((Integer i) -> loudnesses.get(i).rms())
                        .thenComparing(Comparator.reverseOrder()))
                .orElseThrow();
        ListeningInput input = channels.get(loudest);
        List<Doubt> doubts = RecordingDoubts.of(channels, loudnesses, loudest);
        return new ListeningResult(
                loudest,
                input.wave().samples().size() / input.wave().sampleRate(),
                new ListeningMeasurement(input, loudnesses.get(loudest)).figures(),
                doubts);
    }

    private Map<ListeningFigure, Measured> figures() {
        double step = step() / Math.sqrt(12);
        if (input.hasUnit()) {
            values.put(ListeningFigure.RMS, absolute(loudness.rms(), step));
            values.put(ListeningFigure.PEAK, absolute(loudness.peak(), step));
        }
        input.fullScale().ifPresent(full -> {
            values.put(ListeningFigure.RMS_LEVEL, level(loudness.rms(), full, step));
            values.put(ListeningFigure.PEAK_LEVEL, level(loudness.peak(), full, step));
        });
        return values;
    }

    private double step() {
        Samples samples = input.wave().samples();
        OptionalDouble step = samples.gaps() < samples.size() ? CodeStep.of(samples) : OptionalDouble.empty();
        return step.orElse(
                input.fullScale().isPresent()
                        ? input.fullScale().getAsDouble() * STEP_OF_SOUND
                        : loudness.peak() * ROUNDED);
    }

    private Measured absolute(double value, double step) {
        Unit unit = input.wave().unit();
        return isConstant()
                ? Measured.refused(unit, DoubtReason.LOW_RESOLUTION_SILENT)
                : Measured.of(value, unit)
                        .plus(Source.CONVERTER_STEP, step)
                        .plus(Source.VERTICAL_ACCURACY, value * input.verticalAccuracy() / Math.sqrt(3));
    }

    private Measured level(double value, double full, double step) {
        return isConstant()
                ? Measured.refused(Unit.DECIBEL, DoubtReason.LOW_RESOLUTION_SILENT)
                : Measured.of(Decibels.ofAmplitude(value / full), Unit.DECIBEL)
                        .plus(Source.CONVERTER_STEP, Decibels.PER_RELATIVE_AMPLITUDE * step / value);
    }

    private boolean isConstant() {
        return !(loudness.rms() > 0);
    }
}
