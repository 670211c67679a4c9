package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Faults of one file, gathered so that one run names them all, up to a maximum. */
final class Faults {
    private static final int MOST = 500;

    private final List<Problem> problems = new ArrayList<>();
    private int more;

    void add(ErrorCode code, Origin where, String what, String remedy) {
        if (problems.size() < MOST) {
            problems.add(new Problem(code, where, what, remedy));
        } else {
            more++;
        }
    }

    /** Adds what another reading has found. */
    void addAll(InputException found) {
        found.problems().forEach(p -> add(p.code(), p.where(), p.what(), p.remedy()));
    }

    /** The faults, those higher up in the file first. */
    private List<Problem> inOrder() {
        List<Problem> sorted = new ArrayList<>(problems);
        sorted.sort(Comparator.comparingInt(p -> p.where().line()));
        if (more > 0) {
            Origin file = Origin.of(sorted.get(0).where().file());
            sorted.add(new Problem(ErrorCode.MORE_ERRORS, file, "and " + more + " more", "Correct these first"));
        }
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
