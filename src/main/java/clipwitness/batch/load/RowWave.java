package clipwitness.batch.load;

import clipwitness.batch.choice.FileDoubts;
import clipwitness.capture.Channel;
import clipwitness.capture.Samples;
import clipwitness.capture.TimeRecord;
import clipwitness.capture.VerticalRange;
import clipwitness.capture.VerticalScale;
import clipwitness.capture.Waveform;
import clipwitness.job.Bench;
import clipwitness.job.CaptureRow;
import clipwitness.measure.ListeningResult;
import clipwitness.measure.VerticalAccuracy;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.capture.ListeningInput;
import clipwitness.measure.capture.ListeningMeasurement;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.measure.noise.NoiseInput;
import clipwitness.measure.noise.NoiseMeasurement;
import clipwitness.measure.noise.NoiseResult;
import clipwitness.measure.response.ResponseMeasurement;
import clipwitness.measure.response.ResponseResult;
import clipwitness.quantity.Unit;
import clipwitness.reason.Reason;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Measures the chosen channels of a row, as a wave or for noise, with the probes of the row and the vertical accuracy of its instrument. */
public final class RowWave {
    private final CaptureRow row;
    private final Bench bench;

    public RowWave(CaptureRow row, Bench bench) {
        this.row = row;
        this.bench = bench;
    }

    /**
     * The figures; refused where the doubts about a file forbid to measure it.
     *
     * @param record      with the output
     * @param output      channel of the output
     * @param input       channel of the input
     * @param inputRecord with the input, where that is another file
     */
    public WaveformResult measured(
            TimeRecord record, Channel output, Optional<Channel> input, Optional<TimeRecord> inputRecord) {
        Optional<Reason> unfit = unfit(Stream.concat(Stream.of(record), inputRecord.stream()));
        return VerticalAccuracy.applied(measure(record, output, input, unfit), verticalAccuracy());
    }

    /** Noise and hum of the output; refused where the doubts about its file forbid to measure it. */
    public NoiseResult noise(TimeRecord record, Channel output) {
        NoiseInput capture = new NoiseInput(
                wave(record, output, row.outputProbe()),
                bench.mains(),
                output.vertical().map(s -> s.times(row.outputProbe())),
                verticalAccuracy());
        return unfit(Stream.of(record))
                .map(reason -> NoiseMeasurement.refused(capture, reason))
                .orElseGet(() -> NoiseMeasurement.of(capture));
    }

    /** Length and level of a recording of playing, from its channels. */
    public ListeningResult listening(TimeRecord record, List<Channel> channels) {
        return ListeningMeasurement.of(channels.stream()
                .map(c -> new ListeningInput(
                        wave(record, c, row.outputProbe()),
                        c.unit().isPresent(),
                        c.vertical()
                                .map(s -> s.times(row.outputProbe()))
                                .map(VerticalScale::fullScale)
                                .orElse(OptionalDouble.empty()),
                        verticalAccuracy()))
                .toList());
    }

    /**
     * The response; refused where the doubts about a file forbid to measure it.
     *
     * @param record      with the output
     * @param output      channel of the output
     * @param input       channel of the input
     * @param inputRecord with the input, where that is another file
     */
    public ResponseResult response(
            TimeRecord record, Channel output, Optional<Channel> input, Optional<TimeRecord> inputRecord) {
        OptionalDouble frequency = row.condition().frequency();
        if (frequency.isPresent()) {
            return ResponseMeasurement.ofSine(
                    measured(record, output, input, inputRecord),
                    frequency.getAsDouble(),
                    row.condition().level());
        }
        WaveformInput capture = capture(record, output, input);
        VerticalRange range = new VerticalRange(
                capture.outputScale()
                        .map(s -> OptionalDouble.of(s.perDivision()))
                        .orElse(OptionalDouble.empty()),
                OptionalDouble.empty());
        return unfit(Stream.concat(Stream.of(record), inputRecord.stream()))
                .map(reason -> ResponseMeasurement.refused(capture, range, reason))
                .orElseGet(() -> ResponseMeasurement.ofSweep(capture, range));
    }

    private static Optional<Reason> unfit(Stream<TimeRecord> records) {
        return records.map(FileDoubts::unfit).flatMap(Optional::stream).findFirst();
    }

    private double verticalAccuracy() {
        return bench.instruments().stream()
                .filter(i -> row.instrument().equals(Optional.of(i.name())))
                .flatMapToDouble(i -> i.verticalAccuracy().stream())
                .findFirst()
                .orElse(bench.verticalAccuracy());
    }

    private WaveformResult measure(TimeRecord record, Channel output, Optional<Channel> input, Optional<Reason> unfit) {
        WaveformInput capture = capture(record, output, input);
        return unfit.map(reason -> WaveformMeasurement.refused(capture, reason))
                .orElseGet(() -> WaveformMeasurement.of(capture));
    }

    private WaveformInput capture(TimeRecord record, Channel output, Optional<Channel> input) {
        Waveform out = wave(record, output, row.outputProbe());
        Optional<Waveform> in = input.map(c -> wave(record, c, row.inputProbe()));
        return new WaveformInput(
                out,
                in,
                row.condition().frequency(),
                output.vertical().map(s -> s.times(row.outputProbe())),
                input.flatMap(Channel::vertical).map(s -> s.times(row.inputProbe())),
                bench.mains());
    }

    private static Waveform wave(TimeRecord record, Channel channel, double probe) {
        Samples samples = probe == 1 ? channel.samples() : channel.samples().map(v -> v * probe);
        return new Waveform(samples, record.sampleRate(), channel.unit().orElse(Unit.VOLT));
    }
}
