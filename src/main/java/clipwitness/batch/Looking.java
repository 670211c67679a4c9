package clipwitness.batch;

import clipwitness.capture.Channel;
import clipwitness.capture.Doubt;
import clipwitness.capture.DoubtCode;
import clipwitness.capture.Export;
import clipwitness.capture.InputException;
import clipwitness.capture.Severity;
import clipwitness.capture.TimeRecord;
import clipwitness.capture.Waveform;
import clipwitness.measure.WaveformInput;
import clipwitness.measure.WaveformMeasurement;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import clipwitness.reading.ExportReader;
import clipwitness.reading.Progress;
import clipwitness.reading.ReadingOptions;
import clipwitness.report.Look;
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
        Export export = ExportReader.read(file, file.toString(), options, progress);
        List<Look.ChannelLook> channels = new ArrayList<>();
        List<Doubt> doubts = new ArrayList<>(export.doubts());
        boolean measurable = export instanceof TimeRecord
                && export.doubts().stream().noneMatch(d -> d.severity() == Severity.REFUSAL);
        for (Channel c : export.channels()) {
            Optional<WaveformResult> wave =
                    measurable ? Optional.of(measure((TimeRecord) export, c)) : Optional.empty();
            wave.ifPresent(w -> w.doubts()
                    .forEach(d -> doubts.add(named(c, d, export.channels().size()))));
            channels.add(new Look.ChannelLook(c, wave));
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

    /** Without a job nothing says that a channel has to be a wave: a missing fundamental is then a note. */
    private static Doubt named(Channel channel, Doubt doubt, int channels) {
        Severity severity = doubt.code() == DoubtCode.NO_FUNDAMENTAL ? Severity.NOTE : doubt.severity();
        return new Doubt(doubt.code(), severity, channels > 1 ? channel.name() + ": " + doubt.text() : doubt.text());
    }
}
