package clipwitness.draft;

import clipwitness.draft.name.Guess;
import java.util.List;
import java.util.Map;

/**
 * A job sheet and a captures table, as far as the exports tell them.
 *
 * @param number    number of the report
 * @param date      date of the report, ISO 8601
 * @param stimulus  what most waves were captured under
 * @param settings  positions of other controls, name to description
 * @param states    states
 * @param rows      rows of the table
 * @param pictures  pictures in the folder, by their paths
 * @param questions what is to be answered
 */
public record Draft(
        Guess<String> number,
        Guess<String> date,
        StimulusFound stimulus,
        Map<String, String> settings,
        List<DraftState> states,
        List<DraftRow> rows,
        List<String> pictures,
        List<String> questions) {
    /** Copies what it is given. */
    public Draft {
        settings = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(settings));
        states = List.copyOf(states);
        rows = List.copyOf(rows);
        pictures = List.copyOf(pictures);
        questions = List.copyOf(questions);
    }
}
