package clipwitness.measure.wave;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import clipwitness.signal.MeanCycle;

/**
 * Share of the period with a swing of at least 0.9 of the upper peak (or at most -0.9 of the lower one), in percent, on the mean cycle with
 * straight lines between the bins. A sine has 14.36 %, a triangle 5 %, a square wave 50 %.
 */
final class Dwell {
    private static final double SHARE_OF_PEAK = 0.9;

    private Dwell() {}

    /** The share near the upper extreme (sign 1) or the lower one (sign -1). */
    static Measured of(FittedWave wave, Extreme extreme, int sign) {
        MeanCycle cycle = wave.cycle();
        double mean = wave.fit().mean();
        double level = SHARE_OF_PEAK * sign * (extreme.value() - mean);
        double[] above = cycle.values();
        for (int i = 0; i < above.length; i++) {
            above[i] = sign * (above[i] - mean) - level;
        }
        double share = 0;
        double variance = 0;
        double perVolt = 0;
        double bin = 1.0 / above.length;
        for (int i = 0; i < above.length; i++) {
            double here = above[i];
            double next = above[(i + 1) % above.length];
            if (here >= 0 && next >= 0) {
                share += bin;
            } else if (here >= 0 || next >= 0) {
                share += bin * Math.max(here, next) / Math.abs(here - next);
                double slope = slope(above, i) / bin;
                double single = cycle.binUncertainty() / slope;
                variance += Math.min(single * single, bin * single / Math.sqrt(Math.PI));
                perVolt += 1 / slope;
            }
        }
        double noise = Math.sqrt(variance + Math.pow(SHARE_OF_PEAK * extreme.noise() * perVolt, 2));
        Measured.Value dwell = Measured.withNoise(100 * share, Unit.PERCENT, 100 * noise);
        return extreme.step() > 0 ? dwell.plus(Source.CONVERTER_STEP, 100 * extreme.step() * perVolt) : dwell;
    }

    /** Rise from bin to bin near a crossing, taken over six bins, V. */
    private static double slope(double[] above, int at) {
        int n = above.length;
        double wide = Math.abs(above[(at + 4) % n] - above[(at + n - 3) % n]) / 7;
        return Math.max(wide, 1e-3 * Math.abs(above[(at + 1) % n] - above[at]));
    }
}
