package clipwitness.batch.choice;

import clipwitness.capture.Channel;
import clipwitness.capture.TimeRecord;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.job.CaptureRow;
import clipwitness.job.Job;
import java.util.List;
import java.util.Optional;

/**
 * Which channels of an export are output and input: those that the row names, by name or 1-based number; else the only channel is the
 * output, and of two the first is the input.
 *
 * @param output output channel
 * @param input  input channel of the same export
 */
public record ChannelChoice(Channel output, Optional<Channel> input) {
    /**
     * Chooses the channels.
     *
     * @throws InputException where the row names a channel that is not there, or more channels are there than can be told apart
     */
    public static ChannelChoice of(CaptureRow row, TimeRecord export) throws InputException {
        Optional<Channel> input = row.inputFile().isEmpty() && row.input().isPresent()
                ? Optional.of(named(row, "input", row.input().get(), export.channels()))
                : Optional.empty();
        if (row.output().isPresent()) {
            Channel output = named(row, "output", row.output().get(), export.channels());
            return new ChannelChoice(output, input.or(() -> otherOfTwo(row, export.channels(), output)));
        }
        return input.isPresent() ? new ChannelChoice(onlyOther(row, export, input.get()), input) : byCount(row, export);
    }

    /** The channel of a file that holds the input alone. */
    public static Channel ofInputFile(CaptureRow row, TimeRecord export) throws InputException {
        return row.input().isPresent()
                ? named(row, "input", row.input().get(), export.channels())
                : only(row, "input", export.channels(), export);
    }

    private static ChannelChoice byCount(CaptureRow row, TimeRecord export) throws InputException {
        List<Channel> channels = export.channels();
        if (channels.size() == 2 && row.inputFile().isEmpty()) {
            return new ChannelChoice(channels.get(1), Optional.of(channels.get(0)));
        }
        return new ChannelChoice(only(row, "output", channels, export), Optional.empty());
    }

    private static Optional<Channel> otherOfTwo(CaptureRow row, List<Channel> channels, Channel output) {
        return channels.size() == 2 && row.inputFile().isEmpty()
                ? channels.stream().filter(c -> c.column() != output.column()).findFirst()
                : Optional.empty();
    }

    private static Channel onlyOther(CaptureRow row, TimeRecord export, Channel input) throws InputException {
        return only(
                row,
                "output",
                export.channels().stream()
                        .filter(c -> c.column() != input.column())
                        .toList(),
                export);
    }

    private static Channel only(CaptureRow row, String column, List<Channel> channels, TimeRecord export)
            throws InputException {
        if (channels.size() == 1) {
            return channels.get(0);
        }
        throw new InputException(
                ErrorCode.WHICH_CHANNEL,
                where(row, column),
                export.file() + " has " + export.channels().size() + " channels ("
                        + NamedChannel.names(export.channels()) + ") and the row does not say which is the " + column,
                "Write the channel's name or number in column " + column);
    }

    private static Channel named(CaptureRow row, String column, String wanted, List<Channel> channels)
            throws InputException {
        return NamedChannel.of(channels, wanted, row.file(), where(row, column));
    }

    /** The cell of the captures table that names a channel. */
    static Origin where(CaptureRow row, String column) {
        return new Origin(Job.TABLE_FILE, row.row(), column);
    }
}
