package clipwitness.draft;

import clipwitness.capture.Channel;
import clipwitness.capture.CurveTable;
import clipwitness.capture.Export;
import clipwitness.capture.Samples;
import clipwitness.capture.TimeRecord;
import clipwitness.capture.VerticalRange;
import clipwitness.capture.Waveform;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.measure.response.ResponseMeasurement;
import clipwitness.measure.response.ResponseResult;
import clipwitness.quantity.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Looks at the samples of an export: what kind of capture could it be? */
public final class ContentReading {
    /** Share of the points of a response that the input must explain for the output to follow it. */
    private static final double FOLLOWS = 0.5;
    /** As for a response that is reported: below this coherence there is no gain. */
    private static final double COHERENT = 0.9;

    private static final int STRETCHES = 40;
    /** Levels of stretches of steady noise differ by much less than this factor, those of playing by more. */
    private static final double UNEVEN = 4;

    private ContentReading() {}

    /** What an export holds. */
    public static Content of(Export export) {
        if (export instanceof CurveTable) {
            return new Content(Content.Type.CURVE, List.of(), export.size(), 0, "columns of voltage and current");
        }
        TimeRecord record = (TimeRecord) export;
        List<Content.Heard> heard =
                record.channels().stream().map(c -> heard(record, c)).toList();
        Optional<Content.Heard> tone =
                heard.stream().filter(Content.Heard::hasTone).findFirst();
        if (tone.isPresent()) {
            return content(Content.Type.TONE, record, heard, tone(heard, tone.get()));
        }
        if (record.channels().size() == 2 && isDriven(record)) {
            return content(
                    Content.Type.DRIVEN, record, heard, "no steady tone, and the second channel follows the first");
        }
        Samples last = record.channels().get(record.channels().size() - 1).samples();
        return isUneven(last)
                ? content(Content.Type.PLAYED, record, heard, "no steady tone, and a level that comes and goes")
                : content(Content.Type.QUIET, record, heard, "no steady tone");
    }

    private static Content content(Content.Type type, TimeRecord record, List<Content.Heard> heard, String reason) {
        return new Content(type, heard, record.size(), record.sampleInterval(), reason);
    }

    private static String tone(List<Content.Heard> heard, Content.Heard tone) {
        return "a steady tone of "
                + Rounded.frequency(Rounded.nearby(tone.frequency().getAsDouble()))
                + (heard.size() == 1 ? "" : " in one or more of its " + heard.size() + " channels");
    }

    /** A record that holds more noise than wave has no steady tone. */
    private static Content.Heard heard(TimeRecord record, Channel channel) {
        WaveformResult wave = WaveformMeasurement.of(new WaveformInput(
                new Waveform(
                        channel.samples(), record.sampleRate(), channel.unit().orElse(Unit.VOLT)),
                Optional.empty(),
                OptionalDouble.empty(),
                channel.vertical(),
                Optional.empty()));
        OptionalDouble rms = wave.get(WaveformQuantity.RMS).value();
        OptionalDouble noise = wave.get(WaveformQuantity.NOISE).value();
        OptionalDouble frequency = wave.get(WaveformQuantity.FREQUENCY).value();
        boolean steady = frequency.isPresent()
                && rms.isPresent()
                && noise.isPresent()
                && noise.getAsDouble() <= rms.getAsDouble();
        return steady
                ? new Content.Heard(
                        channel.name(),
                        frequency,
                        wave.get(WaveformQuantity.FUNDAMENTAL).value(),
                        wave.get(WaveformQuantity.THD).value())
                : new Content.Heard(
                        channel.name(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static boolean isDriven(TimeRecord record) {
        Waveform input = wave(record, 0);
        ResponseResult response =
                ResponseMeasurement.ofSweep(WaveformInput.of(wave(record, 1)).withInput(input), VerticalRange.UNKNOWN);
        long follows = response.points().stream()
                .filter(p -> p.coherence().orElse(0) >= COHERENT)
                .count();
        return !response.points().isEmpty()
                && follows > FOLLOWS * response.points().size();
    }

    private static Waveform wave(TimeRecord record, int channel) {
        return new Waveform(record.channels().get(channel).samples(), record.sampleRate(), Unit.VOLT);
    }

    private static boolean isUneven(Samples samples) {
        int length = samples.size() / STRETCHES;
        if (length < STRETCHES) {
            return false;
        }
        double mean = IntStream.range(0, samples.size())
                .mapToDouble(samples::at)
                .filter(v -> !Double.isNaN(v))
                .average()
                .orElse(0);
        double[] powers = IntStream.range(0, STRETCHES)
                .mapToDouble(k -> IntStream.range(k * length, (k + 1) * length)
                        .mapToDouble(i -> samples.at(i) - mean)
                        .filter(v -> !Double.isNaN(v))
                        .map(v -> v * v)
                        .average()
                        .orElse(0))
                .sorted()
                .toArray();
        double middle = powers[STRETCHES / 2];
        return Arrays.stream(powers).max().orElse(0) > UNEVEN * UNEVEN * middle;
    }
}
