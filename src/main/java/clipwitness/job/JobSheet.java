package clipwitness.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The job sheet.
 *
 * @param report   section {@code report}
 * @param shop     section {@code shop}
 * @param customer who brought the unit, empty where the sheet has none
 * @param unit     section {@code unit}
 * @param work     what was done, empty where the sheet has none
 * @param bench    section {@code bench}
 * @param stimulus section {@code stimulus}
 * @param settings positions of all other controls, name to description, in the sheet's order
 * @param states   states in the sheet's order
 * @param limits   limits
 * @param rails    meter readings
 * @param clipper  section {@code clipper}
 * @param photos   pictures
 */
public record JobSheet(
        ReportInfo report,
        Shop shop,
        String customer,
        UnitUnderTest unit,
        String work,
        Bench bench,
        Stimulus stimulus,
        Map<String, String> settings,
        List<State> states,
        Limits limits,
        List<Rail> rails,
        Optional<Clipper> clipper,
        List<Photo> photos) {
    /** Copies what it is given. */
    public JobSheet {
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
        states = List.copyOf(states);
        rails = List.copyOf(rails);
        photos = List.copyOf(photos);
    }

    /**
     * A state by its name.
     *
     * @throws IllegalArgumentException if the sheet has no such state
     */
    public State state(String name) {
        return states.stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no state " + name));
    }

    /**
     * What the report calls a state.
     *
     * @throws IllegalArgumentException if the sheet has no such state
     */
    public String label(String name) {
        return state(name).label();
    }

    /**
     * What sentences call a state.
     *
     * @throws IllegalArgumentException if the sheet has no such state
     */
    public String called(String name) {
        return state(name).called();
    }

    /** States of a role, in the sheet's order. */
    public List<State> states(Role role) {
        return states.stream().filter(s -> s.role() == role).toList();
    }
}
