package clipwitness.measure.transfer;

import clipwitness.measure.Measured;
import clipwitness.measure.wave.FittedWave;
import clipwitness.signal.PolynomialFit;
import clipwitness.signal.WeightedPoints;

/**
 * The output where the input crosses its mean, the average of its rising and its falling crossing: clip levels are the distances of the
 * extremes from it.
 *
 * @param value V
 * @param noise standard uncertainty, V
 * @param apart half the distance of the two crossings less what noise adds to it, V: a bound; 0 where noise alone explains it
 */
record MeanCrossing(double value, double noise, double apart) {
    private static final double WIDEST = 0.03;

    static MeanCrossing of(FittedWave output, AlignedInput aligned) {
        double rising = aligned.rising();
        double falling = aligned.falling();
        PolynomialFit up = around(output, rising);
        PolynomialFit down = around(output, falling);
        double variance = (up.varianceAt(rising) + down.varianceAt(falling)) / 4;
        double ofOutput = output.scatter() * Math.sqrt(variance);
        double gain = up.slopeAt(rising) / (2 * Math.PI * aligned.amplitude());
        double ofInput = gain * Math.sqrt(aligned.crossingVariance());
        double noise = Math.hypot(ofOutput, ofInput);
        double half = (up.at(rising) - down.at(falling)) / 2;
        double apart = Math.abs(half) > Measured.COVERAGE_FACTOR * noise ? Math.sqrt(half * half - noise * noise) : 0;
        return new MeanCrossing((up.at(rising) + down.at(falling)) / 2, noise, apart);
    }

    /** Parabola through the folded samples around a phase. */
    private static PolynomialFit around(FittedWave wave, double phase) {
        WeightedPoints points = wave.cycle().points().cycleFrom(phase - 0.5);
        return PolynomialFit.around(points, phase, WIDEST, 2, Math.hypot(wave.scatter(), wave.undithered()));
    }
}
