package clipwitness.reading;

import clipwitness.capture.Channel;
import clipwitness.capture.Samples;
import clipwitness.capture.VerticalScale;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.quantity.Unit;
import clipwitness.reading.file.Notes;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.Preamble;
import clipwitness.reason.Argument;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the channels of an export from its columns of values. */
final class Channels {
    private static final double LEAST_VALUE = 1e-18;
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
     * @param curve   whether they are those of a curve
     */
    List<Channel> of(List<Column> columns, List<double[]> written, boolean curve) throws InputException {
        List<String> names = ChannelNames.of(columns, preamble);
        List<ChannelUnit> units = new ChannelUnits(columns, names, preamble, options, notes, curve).find(written);
        List<Channel> channels = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            units.get(i).apply(written.get(i));
            Samples samples = Samples.adopted(written.get(i));
            written.set(i, new double[0]);
            if (samples.gaps() < samples.size()) {
                refuseVanishing(names.get(i), samples);
                noteGaps(names.get(i), samples);
                noteCoupling(names.get(i), Coupling.isAc(preamble, names.get(i), i, columns.size()));
                channels.add(new Channel(
                        names.get(i),
                        i + 1,
                        units.get(i).unit(),
                        samples,
                        vertical(names.get(i), i, columns.size(), samples)));
            } else {
                notes.doubt(Severity.WARNING, DoubtReason.MISSING_SAMPLES_ALL, Argument.name(names.get(i)));
            }
        }
        if (channels.isEmpty()) {
            throw new InputException(
                    ErrorCode.NO_VALUES,
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
            notes.doubt(Severity.NOTE, DoubtReason.AC_COUPLED, Argument.name(name));
        }
    }

    /** Squares of smaller values leave the range of a double; no instrument resolves as little. */
    private void refuseVanishing(String name, Samples samples) throws InputException {
        double largest = Math.max(Math.abs(samples.minimum()), Math.abs(samples.maximum()));
        if (largest > 0 && largest < LEAST_VALUE) {
            throw new InputException(
                    ErrorCode.NO_VALUES,
                    Origin.of(file),
                    name + " reaches " + largest + " at most, which no instrument resolves",
                    "Check the numbers, their unit and their scale");
        }
    }

    private void noteGaps(String name, Samples samples) {
        if (samples.gaps() == 0) {
            return;
        }
        double share = (double) samples.gaps() / samples.size();
        notes.doubt(
                share > MOST_GAPS ? Severity.REFUSAL : Severity.WARNING,
                DoubtReason.MISSING_SAMPLES_CELLS,
                Argument.name(name),
                Argument.count(samples.gaps()),
                Argument.count(samples.size()),
                Argument.plain(100 * share, Unit.PERCENT, 2));
    }
}
