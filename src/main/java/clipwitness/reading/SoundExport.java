package clipwitness.reading;

import clipwitness.capture.Channel;
import clipwitness.capture.Export;
import clipwitness.capture.Samples;
import clipwitness.capture.TimeRecord;
import clipwitness.capture.VerticalScale;
import clipwitness.fault.InputException;
import clipwitness.quantity.ColumnUnits;
import clipwitness.quantity.ColumnUnits.Prefixed;
import clipwitness.quantity.Unit;
import clipwitness.reading.file.Notes;
import clipwitness.reading.file.SourceFile;
import clipwitness.reading.number.WrittenUnit;
import clipwitness.reading.sound.SoundFile;
import clipwitness.reason.Argument;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.LayoutRemark;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A record from a sound file: channels {@code 1}, {@code 2} and so on, in volts where the user says what full scale is worth. */
final class SoundExport {
    private final String file;
    private final ReadingOptions options;
    private final Notes notes;

    private SoundExport(String file, ReadingOptions options, Notes notes) {
        this.file = file;
        this.options = options;
        this.notes = notes;
    }

    static Export read(SourceFile source, ReadingOptions options, Notes notes) throws InputException {
        SoundFile sound = SoundFile.read(source);
        UserUnits.requireOneFor(source.name(), options, sound.channels().size());
        return new SoundExport(source.name(), options, notes).of(sound);
    }

    private void form(SoundFile sound) {
        int channels = sound.channels().size();
        Argument bits = Argument.count(sound.bits());
        if (channels == 1) {
            notes.evidence(sound.whole() ? LayoutRemark.SOUND_PCM_OF_ONE : LayoutRemark.SOUND_FLOAT_OF_ONE, bits);
        } else {
            notes.evidence(
                    sound.whole() ? LayoutRemark.SOUND_PCM : LayoutRemark.SOUND_FLOAT, bits, Argument.count(channels));
        }
    }

    private Export of(SoundFile sound) {
        int frames = sound.channels().get(0).length;
        form(sound);
        notes.evidence(LayoutRemark.SOUND_RATE, Argument.count(sound.rate()));
        if (sound.promised() > frames) {
            notes.doubt(
                    Severity.WARNING,
                    DoubtReason.MISSING_SAMPLES_SOUND,
                    Argument.count(frames),
                    Argument.count(sound.promised()));
        }
        notes.doubt(Severity.NOTE, DoubtReason.AC_COUPLED_SOUND);
        return new TimeRecord(
                file,
                0,
                options.interval().orElse(1.0 / sound.rate()),
                channels(sound),
                notes.doubts(),
                notes.evidence());
    }

    private List<Channel> channels(SoundFile sound) {
        List<Optional<WrittenUnit>> units = units(sound.channels().size());
        List<Channel> channels = new ArrayList<>();
        for (int c = 0; c < sound.channels().size(); c++) {
            double[] values = sound.channels().get(c);
            Optional<WrittenUnit> unit = units.get(c);
            double written = options.scale().orElse(1);
            double scale = unit.map(u -> u.resolve(written)).orElse(written);
            for (int i = 0; i < values.length; i++) {
                values[i] *= scale;
            }
            Samples samples = Samples.adopted(values);
            channels.add(new Channel(
                    String.valueOf(c + 1), c + 1, unit.map(WrittenUnit::unit), samples, range(sound, samples, scale)));
        }
        return channels;
    }

    private List<Optional<WrittenUnit>> units(int channels) {
        if (options.scale().isEmpty() && options.unit().isEmpty()) {
            notes.doubt(
                    Severity.WARNING,
                    DoubtReason.UNIT_ASSUMED_SOUND,
                    Argument.names(IntStream.rangeClosed(1, channels)
                            .mapToObj(String::valueOf)
                            .toList()));
            return Collections.nCopies(channels, Optional.empty());
        }
        List<Prefixed> stated = options.unit().orElse(ColumnUnits.of(Unit.VOLT)).units();
        List<Optional<WrittenUnit>> units = new ArrayList<>();
        for (int c = 0; c < channels; c++) {
            Prefixed unit = stated.get(stated.size() == 1 ? 0 : c);
            units.add(Optional.of(new WrittenUnit(unit.unit(), unit.exponent())));
        }
        notes.evidence(
                LayoutRemark.SOUND_SCALE,
                Argument.written(options.scale().orElse(1), Unit.ONE),
                Argument.names(units.stream()
                        .map(u -> u.orElseThrow().symbol())
                        .distinct()
                        .toList()));
        return units;
    }

    /** The converter ends at full scale; floating-point samples above it were never at a converter's end. */
    private static Optional<VerticalScale> range(SoundFile sound, Samples samples, double scale) {
        double full = Math.abs(scale);
        boolean inside = samples.gaps() < samples.size()
                && Math.max(Math.abs(samples.minimum()), Math.abs(samples.maximum())) <= full;
        return sound.whole() || inside ? Optional.of(VerticalScale.ofFullScale(full)) : Optional.empty();
    }
}
