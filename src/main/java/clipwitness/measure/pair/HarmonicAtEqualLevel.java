package clipwitness.measure.pair;

import clipwitness.measure.Harmonic;
import clipwitness.measure.HarmonicSpectrum;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Word;

/**
 * A harmonic of a wave that is set to a fixed loudness: 20 lg of A_k / rms, in dB. In dBc a change of scale changes nothing; here it is taken
 * out with the whole wave's rms, so that the change of this figure is what is left of a harmonic's change when both waves are equally loud. Refused where noise
 * leaves no more than a bound of the harmonic: a change from or to a bound has a least size at best.
 */
public final class HarmonicAtEqualLevel {
    private HarmonicAtEqualLevel() {}

    /**
     * The figure of one capture.
     *
     * @param order 1 for the fundamental
     */
    public static Measured of(WaveformResult capture, int order) {
        if (capture.spectrum().isEmpty()) {
            return Measured.refused(Unit.DECIBEL, FigureReason.ONE_NOT_MEASURED);
        }
        HarmonicSpectrum spectrum = capture.spectrum().get();
        if (order > spectrum.count()) {
            return Measured.refused(Unit.DECIBEL, ofHarmonic(FigureReason.HARMONIC_NOT_COMMON, order));
        }
        if (isBuried(spectrum, order)) {
            return Measured.refused(Unit.DECIBEL, ofHarmonic(FigureReason.HARMONIC_BURIED, order));
        }
        double rms = capture.get(WaveformQuantity.RMS).value().orElseThrow();
        return Measured.withNoise(
                Decibels.ofAmplitude(spectrum.amplitude(order) / rms),
                Unit.DECIBEL,
                Decibels.PER_RELATIVE_AMPLITUDE * relative(spectrum, order, rms));
    }

    private static Reason ofHarmonic(FigureReason reason, int order) {
        return Reason.of(reason, Argument.word(Word.HARMONIC, Argument.count(order)));
    }

    private static boolean isBuried(HarmonicSpectrum wave, int order) {
        return Harmonic.isFaint(
                wave.amplitude(order), wave.quadratureUncertainty().at(order - 1));
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
