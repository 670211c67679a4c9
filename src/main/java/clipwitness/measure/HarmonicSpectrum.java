package clipwitness.measure;

import clipwitness.capture.Samples;
import java.util.Objects;

/**
 * Complex harmonics of a wave from the joint fit: y(t) = mean + sum of A_k cos(2 pi k f0 t + phi_k).
 *
 * @param frequency         f0 in Hz
 * @param cosines           A_k cos(phi_k), V; index 0 is the fundamental
 * @param sines             -A_k sin(phi_k), V: y = mean + sum of cosine_k cos(k w t) + sine_k sin(k w t)
 * @param quadratureUncertainty standard uncertainty of each cosine and each sine coefficient, V, harmonic by harmonic
 */
public record HarmonicSpectrum(double frequency, Samples cosines, Samples sines, Samples quadratureUncertainty) {
    /** Checks that the parts are of one length. */
    public HarmonicSpectrum {
        Objects.requireNonNull(cosines, "cosines");
        if (!(frequency > 0)) {
            throw new IllegalArgumentException("frequency must be above 0 Hz but is " + frequency);
        }
        if (cosines.size() < 1 || cosines.size() != sines.size() || cosines.size() != quadratureUncertainty.size()) {
            throw new IllegalArgumentException("a spectrum needs cosines, sines and uncertainties of one length");
        }
    }

    /** Number of harmonics, the fundamental included. */
    public int count() {
        return cosines.size();
    }

    /** Peak amplitude of harmonic k, from 1, in V. */
    public double amplitude(int k) {
        return Math.hypot(cosines.at(k - 1), sines.at(k - 1));
    }

    /** Phase of harmonic k, from 1, in rad, cosine convention. */
    public double phase(int k) {
        return Math.atan2(-sines.at(k - 1), cosines.at(k - 1));
    }
}
