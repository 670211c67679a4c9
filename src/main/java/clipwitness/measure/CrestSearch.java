package clipwitness.measure;

import clipwitness.signal.PolynomialFit;
import clipwitness.signal.WeightedPoints;

/** Extremes of the mean cycle, freed of the upward bias of a maximum over noisy bins. */
final class CrestSearch {
    private static final double[] DEPTHS = {0.1, 0.05, 0.025, 0.0125, 0.006};
    private static final int[] DEGREES = {2, 4, 6};
    private static final int PLACES = 64;

    private CrestSearch() {}

    /** The upper extreme (sign 1) or the lower one (sign -1). */
    static Extreme of(FittedWave wave, int sign) {
        double[] values = wave.cycle().values();
        int bins = values.length;
        double mean = wave.fit().mean();
        double[] swing = new double[bins];
        for (int i = 0; i < bins; i++) {
            swing[i] = sign * ((values[(i + bins - 1) % bins] + values[i] + values[(i + 1) % bins]) / 3 - mean);
        }
        int top = 0;
        for (int i = 1; i < bins; i++) {
            top = swing[i] > swing[top] ? i : top;
        }
        WeightedPoints points = wave.cycle().points();
        double tolerated = Math.hypot(wave.scatter(), wave.undithered());
        Candidate last = null;
        for (double depth : DEPTHS) {
            double level = swing[top] * (1 - depth) - 2 * wave.cycle().binUncertainty();
            int from = top;
            int to = top;
            while (top - from < bins / 2 && swing[Math.floorMod(from - 1, bins)] >= level) {
                from--;
            }
            while (to - top < bins / 2 && swing[(to + 1) % bins] >= level) {
                to++;
            }
            double low = (double) from / bins;
            double high = (to + 1.0) / bins;
            WeightedPoints arc = points.mapped(x -> x + Math.ceil(low - x), y -> sign * (y - mean))
                    .between(low, high);
            for (int degree : DEGREES) {
                if (arc.places() < 2 * degree + 6) {
                    continue;
                }
                PolynomialFit fit = new PolynomialFit(arc, degree);
                last = new Candidate(arc, degree, low, high);
                if (fit.fits(tolerated)) {
                    return last.extreme(wave, mean, sign);
                }
            }
        }
        if (last == null) {
            return new Extreme(
                    sign * swing[top] + mean, (top + 0.5) / bins, wave.cycle().binUncertainty(), wave.undithered());
        }
        return last.extreme(wave, mean, sign);
    }

    private record Candidate(WeightedPoints arc, int degree, double low, double high) {
        Extreme extreme(FittedWave wave, double mean, int sign) {
            PolynomialFit even = new PolynomialFit(arc.half(0), degree);
            PolynomialFit odd = new PolynomialFit(arc.half(1), degree);
            double atEven = argmax(even);
            double atOdd = argmax(odd);
            double value = (even.at(atOdd) + odd.at(atEven)) / 2;
            double variance = (even.varianceAt(atOdd) + odd.varianceAt(atEven)) / 4;
            double phase = (atEven + atOdd) / 2;
            return new Extreme(
                    mean + sign * value,
                    phase - Math.floor(phase),
                    wave.scatter() * Math.sqrt(variance),
                    wave.undithered());
        }

        private double argmax(PolynomialFit fit) {
            double best = low;
            for (int i = 0; i <= PLACES; i++) {
                double at = low + (high - low) * i / PLACES;
                best = fit.at(at) > fit.at(best) ? at : best;
            }
            return best;
        }
    }
}
