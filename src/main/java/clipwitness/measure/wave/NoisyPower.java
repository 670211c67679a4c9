package clipwitness.measure.wave;

import clipwitness.measure.Harmonic;
import clipwitness.measure.Measured;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;

/**
 * A sum of squared amplitudes with the expected share of noise taken off: near zero it may come out negative. The square of an amplitude a
 * whose two quadratures have variance v exceeds a² by 2 v on average and has variance 4 a² v + 4 v² (noncentral chi-squared).
 *
 * @param power        noise removed
 * @param variance     variance of the power
 * @param noiseSquares sum of v² over the amplitudes
 * @param largestNoise largest v
 */
public record NoisyPower(double power, double variance, double noiseSquares, double largestNoise) {
    public static final NoisyPower ZERO = new NoisyPower(0, 0, 0, 0);

    /**
     * Square of one measured amplitude.
     *
     * @param random random variance of each quadrature, whose share of the square is taken off
     * @param whole  variance of each quadrature with everything that is uncertain
     */
    public static NoisyPower ofAmplitude(double amplitude, double random, double whole) {
        double square = amplitude * amplitude - 2 * random;
        double variance = 4 * Math.max(0, square) * whole + 4 * whole * whole;
        return new NoisyPower(square, variance, whole * whole, whole);
    }

    /**
     * Square of one measured quadrature q of variance v: it exceeds q² by v on average and has variance 4 q² v + 2 v².
     *
     * @param random random variance, whose share of the square is taken off
     * @param whole  variance with everything that is uncertain
     */
    public static NoisyPower ofQuadrature(double value, double random, double whole) {
        double square = value * value - random;
        double variance = 4 * Math.max(0, square) * whole + 2 * whole * whole;
        return new NoisyPower(square, variance, whole * whole / 2, whole);
    }

    public NoisyPower plus(NoisyPower other) {
        return new NoisyPower(
                power + other.power,
                variance + other.variance,
                noiseSquares + other.noiseSquares,
                Math.max(largestNoise, other.largestNoise));
    }

    public NoisyPower times(double factor) {
        return new NoisyPower(
                power * factor, variance * factor * factor, noiseSquares * factor * factor, largestNoise * factor);
    }

    /** Root of the power, 0 where it is negative. */
    public double amplitude() {
        return Math.sqrt(Math.max(0, power));
    }

    /**
     * Root of the largest true power L that could have come out as this one: L - power is twice the standard deviation that L itself would
     * give, sqrt(4 L v + 4 sum v²).
     */
    public double largestAmplitude() {
        double above = Math.max(0, power) + 8 * largestNoise;
        double spread = above * above - Math.max(0, power) * Math.max(0, power) + 16 * noiseSquares;
        return Math.sqrt(above + Math.sqrt(Math.max(0, spread)));
    }

    private double expanded() {
        return 2 * Math.sqrt(variance);
    }

    /**
     * Whether noise alone may have made the power: it does not exceed twice the standard deviation, 2 sqrt(sum v²), that noise alone gives
     * it, or the amplitude does not exceed its expanded uncertainty.
     */
    boolean isBuried() {
        return power <= 4 * Math.sqrt(noiseSquares) || expanded() >= 2 * Math.max(0, power);
    }

    /** Whether the amplitude does not exceed three times its standard uncertainty, so that a level has no interval, only a bound. */
    boolean isFaint() {
        return isBuried() || Harmonic.isFaint(amplitude(), expandedAmplitude() / 2);
    }

    /**
     * Expanded uncertainty of the amplitude: the power's over twice the amplitude, and where the amplitude is buried, what is missing to
     * the largest one, at least the amplitude itself.
     */
    public double expandedAmplitude() {
        return isBuried() ? Math.max(amplitude(), largestAmplitude() - amplitude()) : expanded() / (2 * amplitude());
    }

    /**
     * The amplitude over a reference.
     *
     * @param reference            amplitude of the reference, above 0
     * @param referenceUncertainty its standard uncertainty
     * @param factor               100 for a result in percent
     */
    public Measured.Value over(double reference, double referenceUncertainty, double factor, Unit unit) {
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
    public Measured levelOver(double reference, double referenceUncertainty, Unit unit, FigureReason none) {
        return levelOver(reference, referenceUncertainty, unit, none, isBuried());
    }

    /** The amplitude over that of the fundamental in dBc; a bound where it does not exceed three times its standard uncertainty. */
    Measured harmonicLevelOver(double fundamental, double fundamentalUncertainty, FigureReason none) {
        return levelOver(fundamental, fundamentalUncertainty, Unit.DBC, none, isFaint());
    }

    private Measured levelOver(
            double reference, double referenceUncertainty, Unit unit, FigureReason none, boolean bound) {
        double amplitude = bound ? Math.max(amplitude(), largestAmplitude() / 2) : amplitude();
        if (!(amplitude > 0)) {
            return Measured.refused(unit, none);
        }
        double own = bound
                ? Decibels.ofAmplitude(largestAmplitude() / amplitude) / 2
                : Decibels.PER_RELATIVE_AMPLITUDE * expandedAmplitude() / 2 / amplitude;
        double fromReference = Decibels.PER_RELATIVE_AMPLITUDE * referenceUncertainty / reference;
        Measured.Value level =
                Measured.withNoise(Decibels.ofAmplitude(amplitude / reference), unit, Math.hypot(own, fromReference));
        return bound ? level.asUpperBound() : level;
    }
}
