package clipwitness.batch.choice;

import clipwitness.capture.Channel;
import clipwitness.capture.TimeRecord;
import clipwitness.fault.InputException;
import clipwitness.job.CaptureRow;
import java.util.List;

/** Which channels of a recording of playing are meant: the one that its row names as output, else all of them, left and right alike. */
public final class ListeningChoice {
    private ListeningChoice() {}

    /**
     * The channels, at least one.
     *
     * @throws InputException where the row names a channel that is not there
     */
    public static List<Channel> of(CaptureRow row, TimeRecord record) throws InputException {
        return row.output().isPresent() ? List.of(ChannelChoice.of(row, record).output()) : record.channels();
    }
}
