package clipwitness.measure;

import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.signal.PolynomialFit;

/**
 * Width of the knee on the upper side of a transfer curve: 20 lg of the ratio of the input levels where the slope has fallen by 90 % and by
 * 10 % of the way from the small-signal slope to the slope at the input's peak, in dB. 0 dB for a perfect corner; 14.9 dB for tanh
 * driven far, 19.1 dB for an arctangent.
 */
final class Knee {
    private static final double WELL_KNOWN = 0.03;
    private static final double NARROWEST = 0.02;
    private static final double WIDEST = 0.2;
    private static final int PLACES = 100;

    private Knee() {}

    static Measured of(Transfer transfer, double smallSignalSlope) {
        double amplitude = transfer.amplitude();
        double[] slopes = new double[PLACES + 1];
        double[] noise = new double[PLACES + 1];
        double[] places = new double[PLACES + 1];
        for (int i = 0; i <= PLACES; i++) {
            places[i] = amplitude * Math.pow(0.02, 1 - (double) i / PLACES);
            PolynomialFit fit = local(transfer, places[i], smallSignalSlope);
            slopes[i] = fit.slopeAt(places[i]);
            noise[i] = transfer.scatter() * Math.sqrt(fit.slopeVarianceAt(places[i]));
        }
        double last = slopes[PLACES];
        if (last > smallSignalSlope / 2) {
            return Measured.refused(Unit.DECIBEL, "the slope at the input's peak exceeds half the small-signal slope");
        }
        double way = smallSignalSlope - last;
        double[] begin = crossing(places, slopes, noise, smallSignalSlope - 0.1 * way);
        double[] end = crossing(places, slopes, noise, smallSignalSlope - 0.9 * way);
        double width = Math.max(0, Decibels.ofAmplitude(end[0] / begin[0]));
        double relative = Math.hypot(begin[1] / begin[0], end[1] / end[0]);
        return Measured.withNoise(width, Unit.DECIBEL, Decibels.PER_RELATIVE_AMPLITUDE * relative);
    }

    private static PolynomialFit local(Transfer transfer, double at, double smallSignalSlope) {
        double reach = NARROWEST * transfer.amplitude();
        while (true) {
            double low = at - reach;
            double high = at + reach;
            if (transfer.points().countBetween(low, high) >= 8) {
                PolynomialFit fit = new PolynomialFit(transfer.points().between(low, high), 2);
                double uncertainty = transfer.scatter() * Math.sqrt(fit.slopeVarianceAt(at));
                if (uncertainty <= WELL_KNOWN * smallSignalSlope || reach > WIDEST * transfer.amplitude()) {
                    return fit;
                }
            }
            reach *= 1.4;
        }
    }

    /** Mean of first and last crossing downwards, and its standard uncertainty. */
    private static double[] crossing(double[] x, double[] y, double[] noise, double level) {
        int first = 0;
        while (first < x.length - 2 && y[first + 1] > level) {
            first++;
        }
        int last = x.length - 2;
        while (last > 0 && y[last] < level) {
            last--;
        }
        double place = Math.sqrt(interpolated(x, y, first, level) * interpolated(x, y, last, level));
        int low = Math.max(0, Math.min(first, last) - 3);
        int high = Math.min(x.length - 1, Math.max(first, last) + 4);
        double steep = Math.max((y[low] - y[high]) / (x[high] - x[low]), 1e-6 * Math.abs(level) / x[high]);
        return new double[] {place, Math.min(noise[last] / steep, place)};
    }

    private static double interpolated(double[] x, double[] y, int i, double level) {
        double share = y[i] == y[i + 1] ? 0.5 : (y[i] - level) / (y[i] - y[i + 1]);
        return x[i] + (x[i + 1] - x[i]) * Math.max(0, Math.min(1, share));
    }
}
