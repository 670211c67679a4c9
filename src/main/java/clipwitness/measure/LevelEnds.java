package clipwitness.measure;

import clipwitness.quantity.Decibels;

/**
 * How far a level in dB may lie from where it stands, by 20 lg of the two ends of its amplitude. Near its uncertainty an amplitude of 1 ± 0.9 lies between
 * 0.1 and 1.9, its level 5.6 dB above to 20 dB below: no ± in dB says that (measurement book, section 2, harmonics).
 *
 * @param above how far the upper end lies above, dB, 0 or more
 * @param below how far the lower end lies below, dB, 0 or more; infinite where there may be no amplitude at all
 */
public record LevelEnds(double above, double below) {
    /** From here on an amount is near its uncertainty: its upper end is three times its lower one. */
    private static final double NEAR = 0.5;

    /** The ends of a level whose amplitude is an amount, a bound of it or not. */
    public static LevelEnds of(double level, Measured.Value amount) {
        double expanded = amount.expanded();
        double least = amount.isUpperBound() ? 0 : amount.number() - expanded;
        return new LevelEnds(
                Math.max(0, Decibels.ofAmplitude(amount.number() + expanded) - level),
                least > 0 ? Math.max(0, level - Decibels.ofAmplitude(least)) : Double.POSITIVE_INFINITY);
    }

    /** The ends of a level whose expanded uncertainty was carried to dB to first order. */
    public static LevelEnds ofFirstOrder(double expanded) {
        double relative = expanded / Decibels.PER_RELATIVE_AMPLITUDE;
        return new LevelEnds(
                Decibels.ofAmplitude(1 + relative),
                relative < 1 ? -Decibels.ofAmplitude(1 - relative) : Double.POSITIVE_INFINITY);
    }

    /** Whether an amount, 0 or more, is near its uncertainty, so that its level has no symmetric interval. */
    public static boolean isNearUncertainty(Measured.Value amount) {
        return amount.isUpperBound() || !(amount.expanded() <= NEAR * amount.number());
    }

    /** How far the upper or the lower end lies away, dB. */
    public double to(boolean up) {
        return up ? above : below;
    }
}
