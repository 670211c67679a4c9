package clipwitness.compare.finding;

import clipwitness.capture.Condition;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The harmonics above the seventh when both states are set equally loud.
 *
 * @param subject   states, and the highest setting
 * @param high      change of the harmonics above the seventh over the rms, dB
 * @param elsewhere another setting that says otherwise
 * @param against   single harmonics above the seventh that go against the sum of all of these; empty where {@code elsewhere} is present
 */
public record Matched(
        Subject subject, Difference high, Optional<Elsewhere> elsewhere, List<LevelMatchedHarmonic> against)
        implements Finding {
    /** Copies what it is given. */
    public Matched {
        against = List.copyOf(against);
    }

    /** What the harmonics above the seventh do. */
    public enum Kind {
        /** They rise. */
        HIGHER,
        /** They fall. */
        LOWER,
        /** They stay. */
        ALIKE,
        /** Noise hides what they do. */
        BURIED;

        /** Name in the results and of the sentence. */
        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Another setting.
     *
     * @param condition which
     * @param high      the same change there
     */
    public record Elsewhere(Condition condition, Difference high) {}

    /** What the harmonics above the seventh do at this setting. */
    public Kind kind() {
        if (high.significant()) {
            return high.isRise() ? Kind.HIGHER : Kind.LOWER;
        }
        return high.bounded() ? Kind.BURIED : Kind.ALIKE;
    }

    @Override
    public String code() {
        return "level-matched";
    }

    @Override
    public String word() {
        return kind().code();
    }

    @Override
    public List<FindingValue> values() {
        List<FindingValue> values = new ArrayList<>();
        values.add(FindingValue.of("highHarmonics", high, Unit.DECIBEL));
        elsewhere.ifPresent(e -> {
            e.condition()
                    .gainPercent()
                    .ifPresent(g -> values.add(FindingValue.stated("elsewhereGainPercent", g, Unit.PERCENT)));
            values.add(FindingValue.of("elsewhereHighHarmonics", e.high(), Unit.DECIBEL));
        });
        against.forEach(h -> values.add(
                FindingValue.of("harmonic" + h.order(), h.change().asValue().orElseThrow())));
        return values;
    }
}
