package clipwitness.job;

import clipwitness.capture.InputException;
import clipwitness.capture.Origin;
import clipwitness.capture.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Faults of one file, gathered so that one run names them all. */
final class Faults {
    private final List<Problem> problems = new ArrayList<>();

    void add(Origin where, String what, String remedy) {
        problems.add(new Problem(where, what, remedy));
    }

    /** The faults, those higher up in the file first. */
    List<Problem> inOrder() {
        List<Problem> sorted = new ArrayList<>(problems);
        sorted.sort(Comparator.comparingInt(p -> p.where().line()));
        return sorted;
    }

    /** Throws one exception that holds all faults of some files, if there are any. */
    static void throwIfAny(Faults... files) throws InputException {
        List<Problem> all = new ArrayList<>();
        for (Faults file : files) {
            all.addAll(file.inOrder());
        }
        if (!all.isEmpty()) {
            throw new InputException(all);
        }
    }
}
