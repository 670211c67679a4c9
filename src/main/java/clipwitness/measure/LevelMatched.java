package clipwitness.measure;

import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;

/**
 * Change of a harmonic after both waves are set equally loud: 20 lg of A_k / rms of the second less that of the first, in dB. In dBc a change
 * of scale changes nothing; here it is taken out with the whole wave's rms.
 */
public final class LevelMatched {
    private LevelMatched() {}

    /**
     * The change from one capture to another.
     *
     * @param order 1 for the fundamental
     */
    public static Measured of(WaveformResult from, WaveformResult to, int order) {
        if (from.spectrum().isEmpty() || to.spectrum().isEmpty()) {
            return Measured.refused(Unit.DECIBEL, "one of the captures could not be measured");
        }
        HarmonicSpectrum before = from.spectrum().get();
        HarmonicSpectrum after = to.spectrum().get();
        if (order > Math.min(before.count(), after.count())) {
            return Measured.refused(Unit.DECIBEL, "harmonic " + order + " was not measured in both captures");
        }
        if (isBuried(before, order) || isBuried(after, order)) {
            return Measured.refused(Unit.DECIBEL, "noise buries harmonic " + order);
        }
        double change = Decibels.ofAmplitude(after.amplitude(order) / rms(to) * rms(from) / before.amplitude(order));
        double noise = Math.hypot(relative(before, order, rms(from)), relative(after, order, rms(to)));
        return Measured.withNoise(change, Unit.DECIBEL, Decibels.PER_RELATIVE_AMPLITUDE * noise);
    }

    private static boolean isBuried(HarmonicSpectrum wave, int order) {
        return wave.amplitude(order) <= 2 * wave.quadratureUncertainty().at(order - 1);
    }

    private static double rms(WaveformResult result) {
        return result.get(WaveformQuantity.RMS).value().orElseThrow();
    }

    /** Standard uncertainty of ln(A_k / rms): the rms holds A_k too, so their errors partly cancel. */
    private static double relative(HarmonicSpectrum wave, int order, double rms) {
        double sum = 0;
        for (int k = 1; k <= wave.count(); k++) {
            double gradient = -wave.amplitude(k) / (2 * rms * rms) + (k == order ? 1 / wave.amplitude(k) : 0);
            sum = Math.hypot(sum, gradient * wave.quadratureUncertainty().at(k - 1));
        }
        return sum;
    }
}
