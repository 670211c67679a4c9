package clipwitness.compare.finding;

import clipwitness.capture.Condition;
import clipwitness.compare.judge.CommonPractice;
import clipwitness.compare.result.Item;
import java.util.Optional;

/**
 * What changed at one setting at which one of two states clips.
 *
 * @param level     change of level, with a value
 * @param nullDepth what is left of the wave once both are set equally loud; empty where it could not be measured
 * @param thd       change of distortion; empty where noise hides one of the two and not even its direction is known
 * @param turn      where the distortion went
 * @param amounts   distortion of both states, percent; empty where one was not measured
 */
public record ClippedSetting(
        Item level, Optional<Item> nullDepth, Optional<Item> thd, Turn turn, Optional<Difference> amounts) {
    /** Decimals of a decibel that an answer tells: one. */
    private static final double TENTHS = 10;

    /** Where the distortion went. */
    public enum Turn {
        /** Down, beyond its uncertainty. */
        LOWER,
        /** Up, beyond its uncertainty. */
        HIGHER,
        /** Nowhere: a change that is heard would have shown. */
        STAYS,
        /** Not known: the uncertainty may hide a change that is heard. */
        UNKNOWN
    }

    /** Under which condition. */
    public Condition condition() {
        return level.condition();
    }

    /** Whether the distortion went somewhere. */
    public boolean turns() {
        return turn == Turn.LOWER || turn == Turn.HIGHER;
    }

    /** Whether the wave was clearly clipped and has next to no distortion now, both with their whole uncertainties. */
    public boolean hardlyClips() {
        return amounts.filter(d -> !d.before().isUpperBound()
                        && d.before().number() - d.before().expanded() >= CommonPractice.CLEARLY_CLIPPED_PERCENT
                        && d.now().number() + d.now().expanded() < CommonPractice.LEAST_JUDGED_PERCENT)
                .isPresent();
    }

    /** Size of the change of distortion, dB; 0 where there is no figure. */
    public double size() {
        return thd.map(Items::size).orElse(0.0);
    }

    /** How much the distortion changed at least, dB: its size less its expanded uncertainty; 0 where there is no figure. */
    public double least() {
        return size() - thd.map(Items::uncertainty).orElse(0.0);
    }

    /** Whether the wave is the same but for its level: next to no change of distortion, and a null deeper than its limit with its whole uncertainty. */
    public boolean sameWave() {
        return keepsShape() && turn != Turn.UNKNOWN && thd.isPresent() && size() < CommonPractice.HEARD_DECIBELS;
    }

    /** Whether the null is deeper than its limit, with its whole uncertainty. */
    public boolean keepsShape() {
        return nullDepth.filter(i -> Items.reach(i) <= Items.limit(i)).isPresent();
    }

    /** Whether the null is less deep than its limit, with its whole uncertainty. */
    public boolean isOtherShape() {
        return nullDepth
                .filter(i ->
                        !Items.isBound(i) && i.change().value().orElseThrow() - Items.uncertainty(i) > Items.limit(i))
                .isPresent();
    }

    /** Whether the level changed by what is heard, in tenths of a decibel as it is told: no page says "about as loud" beside a change of 1.0 dB. */
    public boolean isOtherLevel() {
        double told = Math.rint(TENTHS * Items.size(level)) / TENTHS;
        return Significance.of(level) && told >= CommonPractice.HEARD_DECIBELS;
    }
}
