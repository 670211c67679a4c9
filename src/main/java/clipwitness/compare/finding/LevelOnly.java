package clipwitness.compare.finding;

import clipwitness.compare.result.Item;
import java.util.List;

/**
 * The same wave at another level.
 *
 * @param subject   states, and where the level moved most
 * @param level     the change of level there
 * @param nullDepth the null depth with the most that may be left at any setting
 */
public record LevelOnly(Subject subject, Item level, Item nullDepth) implements Finding {
    @Override
    public String code() {
        return "level-only";
    }

    /** Whether it became louder. */
    public boolean isLouder() {
        return level.change().value().orElseThrow() > 0;
    }

    @Override
    public String word() {
        return isLouder() ? "louder" : "quieter";
    }

    @Override
    public List<FindingValue> values() {
        return List.of(FindingValue.of(level), FindingValue.of(nullDepth));
    }
}
