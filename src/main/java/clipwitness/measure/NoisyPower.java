package clipwitness.measure;

import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;

/**
 * A power with the expected share of noise taken off: near zero it may come out negative. The square of an amplitude whose two
 * quadratures have variance v exceeds the true square by 2 v on average and has variance 4 a² v + 4 v² (noncentral chi-squared).
 *
 * @param power    noise removed
 * @param variance variance of the power
 */
record NoisyPower(double power, double variance) {
    static final NoisyPower ZERO = new NoisyPower(0, 0);

    /** Square of a measured amplitude. */
    static NoisyPower ofAmplitude(double amplitude, double quadratureVariance) {
        double square = amplitude * amplitude - 2 * quadratureVariance;
        double spread = 4 * Math.max(0, square) * quadratureVariance + 4 * quadratureVariance * quadratureVariance;
        return new NoisyPower(square, spread);
    }

    NoisyPower plus(NoisyPower other) {
        return new NoisyPower(power + other.power, variance + other.variance);
    }

    NoisyPower times(double factor) {
        return new NoisyPower(power * factor, variance * factor * factor);
    }

    private double expanded() {
        return 2 * Math.sqrt(variance);
    }

    /** Root of the power, 0 where it is negative. */
    double amplitude() {
        return Math.sqrt(Math.max(0, power));
    }

    /** Root of the largest power that the uncertainty allows. */
    double largestAmplitude() {
        return Math.sqrt(Math.max(0, power) + expanded());
    }

    /** Whether the amplitude does not exceed its expanded uncertainty. */
    boolean isBuried() {
        return expanded() >= 2 * Math.max(0, power);
    }

    /**
     * Expanded uncertainty of the amplitude: the power's over twice the amplitude, and where the amplitude is buried, what is missing to
     * the largest one, but never less than the amplitude itself.
     */
    double expandedAmplitude() {
        double amplitude = amplitude();
        return isBuried() ? Math.max(amplitude, largestAmplitude() - amplitude) : expanded() / (2 * amplitude);
    }

    /**
     * The amplitude over a reference.
     *
     * @param reference            amplitude of the reference, above 0
     * @param referenceUncertainty its standard uncertainty
     * @param factor               100 for a result in percent
     */
    Measured over(double reference, double referenceUncertainty, double factor, Unit unit) {
        double value = amplitude() / reference;
        double own = expandedAmplitude() / 2 / reference;
        double fromReference = value * referenceUncertainty / reference;
        Measured.Value measured = Measured.withNoise(factor * value, unit, factor * Math.hypot(own, fromReference));
        return isBuried() ? measured.asUpperBound() : measured;
    }

    /**
     * The amplitude over a reference as a level. Where it is buried, the level stands at half the largest amplitude or above, so that a
     * power which came out negative has one too.
     *
     * @param reference            amplitude of the reference, above 0
     * @param referenceUncertainty its standard uncertainty
     * @param none                 reason of the refusal where there is neither power nor noise
     */
    Measured levelOver(double reference, double referenceUncertainty, Unit unit, String none) {
        double amplitude = isBuried() ? Math.max(amplitude(), largestAmplitude() / 2) : amplitude();
        if (!(amplitude > 0)) {
            return Measured.refused(unit, none);
        }
        double own = isBuried()
                ? Decibels.ofAmplitude(largestAmplitude() / amplitude) / 2
                : Decibels.PER_RELATIVE_AMPLITUDE * expandedAmplitude() / 2 / amplitude;
        double fromReference = Decibels.PER_RELATIVE_AMPLITUDE * referenceUncertainty / reference;
        Measured.Value level =
                Measured.withNoise(Decibels.ofAmplitude(amplitude / reference), unit, Math.hypot(own, fromReference));
        return isBuried() ? level.asUpperBound() : level;
    }
}
