package clipwitness.reading.file;

import clipwitness.capture.Doubt;
import clipwitness.capture.DoubtCode;
import clipwitness.capture.Severity;
import java.util.ArrayList;
import java.util.List;

/** Collects, while one file is read, how each decision was reached and what remains doubtful. */
final class Notes {
    private final List<String> evidence = new ArrayList<>();
    private final List<Doubt> doubts = new ArrayList<>();

    /** Notes a decision and what it rests on. */
    void evidence(String clause) {
        evidence.add(clause);
    }

    /** Notes a doubt. */
    void doubt(DoubtCode code, Severity severity, String text) {
        doubts.add(new Doubt(code, severity, text));
    }

    List<String> evidence() {
        return List.copyOf(evidence);
    }

    List<Doubt> doubts() {
        return List.copyOf(doubts);
    }
}
