package clipwitness.capture;

import clipwitness.reason.Doubt;
import clipwitness.reason.Remark;
import java.util.List;

/** What an export holds, read and understood: a record over time, or a curve of current against voltage. */
public sealed interface Export permits TimeRecord, CurveTable {
    /** Name of the file as the user wrote it. */
    String file();

    /** The channels, in the order of their columns. */
    List<Channel> channels();

    /** What is doubtful about the file itself. */
    List<Doubt> doubts();

    /** How the layout was read, a clause for each decision. */
    List<Remark> evidence();

    /** Number of samples, or of points. */
    default int size() {
        return channels().get(0).samples().size();
    }
}
