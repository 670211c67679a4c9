package clipwitness.compare.finding;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What is left when both states are set equally loud.
 *
 * @param subject   states, and the highest setting
 * @param level     the change of level there
 * @param high      change of the harmonics above the seventh over the rms, dB
 * @param elsewhere another setting that says otherwise
 * @param against   single harmonics above the seventh that go against the sum of all of these; empty where {@code elsewhere} is present
 * @param timbre    what a listener hears of it; empty where nothing can be said of it
 */
public record Matched(
        Subject subject,
        Item level,
        Difference high,
        Optional<Elsewhere> elsewhere,
        List<LevelMatchedHarmonic> against,
        Optional<Timbre> timbre)
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

    /** What a listener hears. */
    public enum Timbre {
        /** Less of the harmonics above the seventh. */
        ROUNDER,
        /** More of them. */
        HARSHER;

        /** Name of the sentence. */
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

    /** Whether the level changed, too. */
    public boolean isOtherLevel() {
        return Significance.of(level);
    }

    @Override
    public String code() {
        return "level-matched";
    }

    @Override
    public String word() {
        return timbre.map(Timbre::code).orElse(kind().code());
    }

    @Override
    public List<FindingValue> values() {
        List<FindingValue> values = new ArrayList<>();
        values.add(FindingValue.of(level));
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
