package clipwitness.compare.finding;

import clipwitness.measure.WaveformQuantity;
import java.util.List;

/**
 * Whether the two halves of the wave are clipped alike.
 *
 * @param subject    states, and the highest setting
 * @param quantity   clip levels or peaks: {@code CLIP_ASYMMETRY} or {@code ASYMMETRY}
 * @param asymmetry  of both states, percent
 * @param clippedAlike whether the later state's halves are clipped alike
 */
public record Asymmetric(Subject subject, WaveformQuantity quantity, Difference asymmetry, boolean clippedAlike)
        implements Finding {
    @Override
    public String code() {
        return "asymmetry";
    }

    @Override
    public String word() {
        return clippedAlike ? "alike" : "unlike";
    }

    @Override
    public List<FindingValue> values() {
        return List.of(
                FindingValue.of(quantity.key() + "Before", asymmetry.before()),
                FindingValue.of(quantity.key() + "Now", asymmetry.now()));
    }
}
