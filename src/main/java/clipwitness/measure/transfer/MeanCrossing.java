package clipwitness.measure.transfer;

import clipwitness.measure.Measured;
import clipwitness.measure.wave.FittedWave;
import clipwitness.signal.MeanCycle;
import clipwitness.signal.PolynomialFit;
import clipwitness.signal.WeightedPoints;

/**
 * The output where the input crosses its mean, the average of its rising and its falling crossing: clip levels are the distances of the
 * extremes from it.
 *
 * @param value V
 * @param noise standard uncertainty, V
 * @param apart half the distance of the two crossings less what noise adds to it, V: a bound; 0 where noise alone explains it; joined with how far
 *              the samples leave the crossings open
 */
record MeanCrossing(double value, double noise, double apart) {
    private static final double WIDEST = 0.03;

    /** Four for each coefficient of a parabola. */
    private static final int FEWEST_PLACES = 12;

    static MeanCrossing of(FittedWave output, AlignedInput aligned) {
        OutputAt up = OutputAt.of(output, aligned.rising());
        OutputAt down = OutputAt.of(output, aligned.falling());
        double variance = (up.variance() + down.variance()) / 4;
        double ofOutput = output.scatter() * Math.sqrt(variance);
        double gain = up.slope() / (2 * Math.PI * aligned.amplitude());
        double ofInput = gain * Math.sqrt(aligned.crossingVariance());
        double noise = Math.hypot(ofOutput, ofInput);
        double half = (up.value() - down.value()) / 2;
        double apart = Math.abs(half) > Measured.COVERAGE_FACTOR * noise ? Math.sqrt(half * half - noise * noise) : 0;
        double bound = Math.hypot(apart, Math.hypot(up.open(), down.open()) / 2);
        return new MeanCrossing((up.value() + down.value()) / 2, noise, bound);
    }

    /**
     * The output at a phase.
     *
     * @param value    V
     * @param variance for samples of unit variance
     * @param slope    V a cycle
     * @param open     how far two ways to find it between the samples part, V: a bound
     */
    private record OutputAt(double value, double variance, double slope, double open) {
        /**
         * By a parabola through the folded samples around the phase. In a record of a whole number of samples a period these may lie at too few places
         * near it, and a parabola over more of the period would not follow the curve: there, by the fit of all harmonics, held against a straight
         * line between the places next to the phase.
         */
        static OutputAt of(FittedWave wave, double phase) {
            MeanCycle cycle = wave.cycle();
            WeightedPoints points = cycle.points().cycleFrom(phase - 0.5);
            double gap = points.widestGap(phase - WIDEST, phase + WIDEST);
            if (gap > 2 * WIDEST / FEWEST_PLACES) {
                PolynomialFit line = lineAround(points, phase, gap);
                double parted = Math.abs(cycle.fitAt(phase) - line.at(phase));
                double noise = wave.scatter() * Math.sqrt(cycle.fitVariance() + line.varianceAt(phase));
                return new OutputAt(
                        cycle.fitAt(phase),
                        cycle.fitVariance(),
                        cycle.fitSlopeAt(phase),
                        parted > Measured.COVERAGE_FACTOR * noise ? parted : 0);
            }
            PolynomialFit fit =
                    PolynomialFit.around(points, phase, WIDEST, 2, Math.hypot(wave.scatter(), wave.undithered()));
            return new OutputAt(fit.at(phase), fit.varianceAt(phase), fit.slopeAt(phase), 0);
        }

        /** Through the places next to the phase, two at least. */
        private static PolynomialFit lineAround(WeightedPoints points, double phase, double gap) {
            double reach = gap;
            while (!points.holds(2, phase - reach, phase + reach) && reach < 1) {
                reach *= 2;
            }
            return new PolynomialFit(points.between(phase - reach, phase + reach), 1);
        }
    }
}
