package clipwitness.reading.file;

import clipwitness.capture.Doubt;
import clipwitness.capture.DoubtCode;
import clipwitness.capture.Severity;
import java.util.ArrayList;
import java.util.List;

/** Collects, while one file is read, how each decision was reached and what remains doubtful. */
public final class Notes {
    private final List<String> evidence = new ArrayList<>();
    private final List<Doubt> doubts = new ArrayList<>();

    /** Notes a decision and what it rests on. */
    public void evidence(String clause) {
        evidence.add(clause);
    }

    /** Notes a doubt. */
    public void doubt(DoubtCode code, Severity severity, String text) {
        doubts.add(new Doubt(code, severity, text));
    }

    public List<String> evidence() {
        return List.copyOf(evidence);
    }

    public List<Doubt> doubts() {
        return List.copyOf(doubts);
    }
}
