package clipwitness.measure.pair;

import clipwitness.measure.HarmonicSpectrum;

/**
 * Overlap of two waves as a function of the time between them: the sum over their common harmonics of A_k B_k cos(beta_k - alpha_k + 2 pi k s), where
 * the first wave (A, alpha) comes later by the share s of a period.
 */
final class Overlap {
    private final double[] real;
    private final double[] imaginary;

    /** The overlap of the first harmonics, so many of them, of two waves. */
    Overlap(HarmonicSpectrum from, HarmonicSpectrum to, int count) {
        real = new double[count];
        imaginary = new double[count];
        for (int i = 0; i < count; i++) {
            real[i] = to.cosines().at(i) * from.cosines().at(i)
                    + to.sines().at(i) * from.sines().at(i);
            imaginary[i] = to.cosines().at(i) * from.sines().at(i)
                    - to.sines().at(i) * from.cosines().at(i);
        }
    }

    /** The overlap at a shift in periods, V². */
    double at(double shift) {
        double stepReal = Math.cos(2 * Math.PI * shift);
        double stepImaginary = Math.sin(2 * Math.PI * shift);
        double turnReal = 1;
        double turnImaginary = 0;
        double sum = 0;
        for (int i = 0; i < real.length; i++) {
            double next = turnReal * stepReal - turnImaginary * stepImaginary;
            turnImaginary = turnReal * stepImaginary + turnImaginary * stepReal;
            turnReal = next;
            sum += real[i] * turnReal - imaginary[i] * turnImaginary;
        }
        return sum;
    }
}
