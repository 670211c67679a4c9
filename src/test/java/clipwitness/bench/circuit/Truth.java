package clipwitness.bench.circuit;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a report has to say about a job, and what it must not.
 *
 * @param healthy whether nothing is wrong
 * @param state   state that has the fault
 * @param wanted  codes of hints of which one at least has to be raised for that state; none where no known fault is behind it
 * @param allowed codes of further hints that are true as well
 * @param half    the half of the output that the hint has to name, if it names one
 */
public record Truth(
        boolean healthy, Optional<String> state, Set<String> wanted, Set<String> allowed, Optional<String> half) {
    /** Copies what it is given. */
    public Truth {
        wanted = Set.copyOf(wanted);
        allowed = Set.copyOf(allowed);
    }

    /** Nothing is wrong; some hints may be true all the same. */
    static Truth sound(String... allowed) {
        return new Truth(true, Optional.empty(), Set.of(), Set.of(allowed), Optional.empty());
    }

    /** A fault that one of some hints has to name. */
    static Truth fault(String state, String... wanted) {
        return new Truth(false, Optional.of(state), Set.of(wanted), Set.of(), Optional.empty());
    }

    /** A fault that the comparison has to show, and that looks like none of the known ones. */
    static Truth change(String state) {
        return fault(state);
    }

    Truth half(String name) {
        return new Truth(healthy, state, wanted, allowed, Optional.of(name));
    }

    Truth allowing(String... codes) {
        return new Truth(healthy, state, wanted, Set.copyOf(List.of(codes)), half);
    }
}
