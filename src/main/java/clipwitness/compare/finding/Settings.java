package clipwitness.compare.finding;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Item;
import java.util.List;

/**
 * Under which conditions something holds.
 *
 * @param meant    conditions where it holds
 * @param judged   conditions where it was judged, at least these
 * @param captured conditions that were compared at all, at least these
 */
public record Settings(List<Condition> meant, List<Condition> judged, List<Condition> captured) {
    /** Copies what it is given. */
    public Settings {
        meant = List.copyOf(meant);
        judged = List.copyOf(judged);
        captured = List.copyOf(captured);
    }

    /** Where some of the judged items of a comparison say something. */
    public static Settings of(List<Item> meant, List<Item> judged, Comparison comparison) {
        return new Settings(Items.conditions(meant), Items.conditions(judged), Items.conditionsOfWaves(comparison));
    }

    /** Whether it holds wherever it was judged. */
    public boolean all() {
        return meant.size() == judged.size();
    }
}
