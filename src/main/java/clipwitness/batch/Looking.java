package clipwitness.batch;

import clipwitness.batch.choice.FileDoubts;
import clipwitness.batch.load.Exhausted;
import clipwitness.batch.load.ExportSize;
import clipwitness.capture.Channel;
import clipwitness.capture.Export;
import clipwitness.capture.TimeRecord;
import clipwitness.capture.Waveform;
import clipwitness.fault.InputException;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.quantity.Unit;
import clipwitness.reading.ExportReader;
import clipwitness.reading.Progress;
import clipwitness.reading.ReadingOptions;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.FrameReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Severity;
import clipwitness.report.data.Look;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Looks at an export without a job. */
public final class Looking {
    private Looking() {}

    /**
     * Reads an export and measures each channel that is a wave.
     *
     * @param file     where it lies, which is its name in messages too
     * @param options  what the user says about it
     * @param progress told how far the reading has come
     * @throws InputException if the file cannot be read
     */
    public static Look at(Path file, ReadingOptions options, Progress progress) throws InputException {
        progress.expect(ExportSize.of(file));
        try {
            return looked(file, options, progress);
        } catch (OutOfMemoryError e) {
            throw new InputException(List.of(Exhausted.memory(file.toString())));
        }
    }

    private static Look looked(Path file, ReadingOptions options, Progress progress) throws InputException {
        Export export = ExportReader.read(file, file.toString(), options, progress);
        List<Look.ChannelLook> channels = new ArrayList<>();
        List<Doubt> doubts = new ArrayList<>(export.doubts());
        boolean measurable =
                export instanceof TimeRecord && FileDoubts.unfit(export).isEmpty();
        for (Channel c : export.channels()) {
            Optional<WaveformResult> wave =
                    measurable ? Optional.of(measure((TimeRecord) export, c)) : Optional.empty();
            Optional<Doubt> noise = wave.flatMap(Looking::mostlyNoise);
            List<Doubt> ofChannel = noise.map(List::of)
                    .orElseGet(() -> wave.map(w -> FileDoubts.without(w.doubts(), export.doubts()))
                            .orElse(List.of()));
            ofChannel.forEach(d -> doubts.add(named(c, d, export.channels().size())));
            channels.add(new Look.ChannelLook(c, noise.isPresent() ? Optional.empty() : wave));
        }
        return new Look(export, channels, doubts);
    }

    private static WaveformResult measure(TimeRecord record, Channel channel) {
        return WaveformMeasurement.of(new WaveformInput(
                new Waveform(
                        channel.samples(), record.sampleRate(), channel.unit().orElse(Unit.VOLT)),
                Optional.empty(),
                OptionalDouble.empty(),
                channel.vertical(),
                Optional.empty()));
    }

    /** A record that holds more noise than wave is not periodic enough for the figures of a wave. */
    private static Optional<Doubt> mostlyNoise(WaveformResult wave) {
        OptionalDouble rms = wave.get(WaveformQuantity.RMS).value();
        OptionalDouble noise = wave.get(WaveformQuantity.NOISE).value();
        boolean mostly = rms.isPresent() && noise.isPresent() && noise.getAsDouble() > rms.getAsDouble();
        return mostly ? Optional.of(Doubt.of(Severity.NOTE, DoubtReason.NO_FUNDAMENTAL_IN_NOISE)) : Optional.empty();
    }

    /** Without a job nothing says that a channel has to be a wave: a missing fundamental is then a note. */
    private static Doubt named(Channel channel, Doubt doubt, int channels) {
        Severity severity = doubt.code() == DoubtCode.NO_FUNDAMENTAL ? Severity.NOTE : doubt.severity();
        return new Doubt(severity, channels > 1 ? inChannel(channel, doubt.reason()) : doubt.reason());
    }

    private static Reason inChannel(Channel channel, Reason reason) {
        return Reason.of(FrameReason.IN_CHANNEL, Argument.name(channel.name()), Argument.inner(reason));
    }
}
