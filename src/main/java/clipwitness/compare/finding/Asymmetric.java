package clipwitness.compare.finding;

import clipwitness.measure.WaveformQuantity;
import java.util.List;
import java.util.Locale;

/**
 * Whether the two halves of the wave are clipped alike.
 *
 * @param subject    states, and the highest setting
 * @param quantity   clip levels or peaks: {@code CLIP_ASYMMETRY} or {@code ASYMMETRY}
 * @param asymmetry  of both states, percent
 * @param kind       how alike the later state's halves are
 */
public record Asymmetric(Subject subject, WaveformQuantity quantity, Difference asymmetry, Kind kind)
        implements Finding {
    /** How alike the halves are. */
    public enum Kind {
        /** They are clipped alike. */
        ALIKE,
        /** They are not, but more so than in the earlier state. */
        EVENER,
        /** They are not. */
        UNLIKE
    }

    @Override
    public String code() {
        return "asymmetry";
    }

    @Override
    public String word() {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public List<FindingValue> values() {
        return List.of(
                FindingValue.of(quantity.key() + "Before", asymmetry.before()),
                FindingValue.of(quantity.key() + "Now", asymmetry.now()));
    }
}
