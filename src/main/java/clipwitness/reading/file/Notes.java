package clipwitness.reading.file;

import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.LayoutRemark;
import clipwitness.reason.Remark;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.List;

/** Collects, while one file is read, how each decision was reached and what remains doubtful. */
public final class Notes {
    private final List<Remark> evidence = new ArrayList<>();
    private final List<Doubt> doubts = new ArrayList<>();

    /** Notes a decision and what it rests on. */
    public void evidence(LayoutRemark decision, Argument... arguments) {
        evidence(Remark.of(decision, arguments));
    }

    /** Notes a decision and what it rests on. */
    public void evidence(Remark decision) {
        evidence.add(decision);
    }

    /** Notes a doubt. */
    public void doubt(Severity severity, DoubtReason reason, Argument... arguments) {
        doubts.add(Doubt.of(severity, reason, arguments));
    }

    public List<Remark> evidence() {
        return List.copyOf(evidence);
    }

    public List<Doubt> doubts() {
        return List.copyOf(doubts);
    }
}
