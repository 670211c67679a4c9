package clipwitness.compare;

import clipwitness.job.Job;
import clipwitness.job.Role;
import clipwitness.job.State;
import java.util.List;
import java.util.Optional;

/**
 * What hints are drawn from.
 *
 * @param job           the job
 * @param catalogue     waveform captures by state and condition
 * @param repeatability how well figures come back
 */
record Evidence(Job job, Catalogue catalogue, Repeatability repeatability) {
    /** States of a role, in the sheet's order. */
    List<State> states(Role role) {
        return job.sheet().states().stream().filter(s -> s.role() == role).toList();
    }

    /** The setting of a state's {@code before} under the same condition. */
    Optional<Setting> before(State state, Setting setting) {
        return state.against().flatMap(b -> catalogue.at(b, setting.condition()));
    }

    /** The setting of a state at the highest gain captured. */
    Optional<Setting> highest(String state) {
        return catalogue.of(state).stream()
                .filter(s -> s.condition().gainPercent().isPresent())
                .reduce((a, b) -> Catalogue.gain(b) > Catalogue.gain(a) ? b : a);
    }
}
