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

    /** The overlaps at shifts in equal steps, an even number of them, over a period; half a period on odd harmonics have the opposite sign. */
    double[] around(int places) {
        double[] overlaps = new double[places];
        for (int p = 0; p < places / 2; p++) {
            double[] parts = parts((double) p / places);
            overlaps[p] = parts[0] + parts[1];
            overlaps[p + places / 2] = parts[1] - parts[0];
        }
        return overlaps;
    }

    /** The overlap at a shift in periods, V². */
    double at(double shift) {
        double[] parts = parts(shift);
        return parts[0] + parts[1];
    }

    /** What odd and what even harmonics give. */
    private double[] parts(double shift) {
        double stepReal = Math.cos(2 * Math.PI * shift);
        double stepImaginary = Math.sin(2 * Math.PI * shift);
        double turnReal = 1;
        double turnImaginary = 0;
        double odd = 0;
        double even = 0;
        for (int i = 0; i < real.length; i++) {
            double next = turnReal * stepReal - turnImaginary * stepImaginary;
            turnImaginary = turnReal * stepImaginary + turnImaginary * stepReal;
            turnReal = next;
            double part = real[i] * turnReal - imaginary[i] * turnImaginary;
            if (i % 2 == 0) {
                odd += part;
            } else {
                even += part;
            }
        }
        return new double[] {odd, even};
    }
}
