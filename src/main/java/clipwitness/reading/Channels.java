package clipwitness.reading;

import clipwitness.capture.Channel;
import clipwitness.capture.DoubtCode;
import clipwitness.capture.Samples;
import clipwitness.capture.Severity;
import clipwitness.capture.VerticalScale;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.quantity.NumberText;
import clipwitness.reading.file.Notes;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.Preamble;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Makes the channels of an export from its columns of values. */
final class Channels {
    private static final double MOST_GAPS = 0.01;

    private final String file;
    private final Preamble preamble;
    private final ReadingOptions options;
    private final Notes notes;

    Channels(String file, Preamble preamble, ReadingOptions options, Notes notes) {
        this.file = file;
        this.preamble = preamble;
        this.options = options;
        this.notes = notes;
    }

    /**
     * The channels.
     *
     * @param columns the columns of values
     * @param written their values as written, unit for unit in the same order; changed in place
     */
    List<Channel> of(List<Column> columns, List<double[]> written) throws InputException {
        List<String> names = ChannelNames.of(columns, preamble);
        List<ChannelUnit> units = new ChannelUnits(columns, names, preamble, options, notes).find(written);
        List<Channel> channels = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            units.get(i).apply(written.get(i));
            Samples samples = Samples.adopted(written.get(i));
            written.set(i, new double[0]);
            if (samples.gaps() < samples.size()) {
                noteGaps(names.get(i), samples);
                noteCoupling(names.get(i), Coupling.isAc(preamble, names.get(i), i, columns.size()));
                channels.add(new Channel(
                        names.get(i),
                        i + 1,
                        units.get(i).unit(),
                        samples,
                        vertical(names.get(i), i, columns.size(), samples)));
            } else {
                notes.doubt(
                        DoubtCode.MISSING_SAMPLES,
                        Severity.WARNING,
                        names.get(i) + " has no sample with a value and is left out.");
            }
        }
        if (channels.isEmpty()) {
            throw new InputException(
                    Origin.of(file),
                    "no sample has a value: all cells of " + String.join(" and ", names)
                            + " are empty or overflow marks",
                    "Capture again at a range that holds the signal");
        }
        return channels;
    }

    private Optional<VerticalScale> vertical(String name, int channel, int channels, Samples samples) {
        return new VerticalFacts(preamble).of(name, channel, channels, samples.minimum(), samples.maximum());
    }

    private void noteCoupling(String name, boolean ac) {
        if (ac) {
            notes.doubt(
                    DoubtCode.AC_COUPLED,
                    Severity.NOTE,
                    name + " was AC coupled, as the preamble says: its mean is lost, and slow waves sag.");
        }
    }

    private void noteGaps(String name, Samples samples) {
        if (samples.gaps() == 0) {
            return;
        }
        double share = (double) samples.gaps() / samples.size();
        notes.doubt(
                DoubtCode.MISSING_SAMPLES,
                share > MOST_GAPS ? Severity.REFUSAL : Severity.WARNING,
                String.format(
                        Locale.ROOT,
                        "%s has %d of %d samples without a value (%s %%): empty cells or overflow marks.",
                        name,
                        samples.gaps(),
                        samples.size(),
                        NumberText.plain(100 * share, 2)));
    }
}
