package clipwitness.measure.transfer;

/** Share of each harmonic of the output in each part of the difference of its branches, where equal inputs do not lie at mirrored phases. */
final class Mixing {
    private static final int PLACES = 256;

    private final double[][] ofReal;
    private final double[][] ofImaginary;

    /**
     * The shares.
     *
     * @param input a distorted input
     * @param count number of harmonics
     */
    Mixing(AlignedInput input, int count) {
        ofReal = new double[count + 1][count + 1];
        ofImaginary = new double[count + 1][count + 1];
        for (int i = 0; i < PLACES; i++) {
            double rising = (i + 0.5) / (2 * PLACES) - 0.25;
            add(turns(rising, count), turns(input.fallingLike(rising), count));
        }
    }

    /** Cosines and sines of the harmonics of a phase. */
    private static double[][] turns(double cycles, int count) {
        double[] cosines = new double[count + 1];
        double[] sines = new double[count + 1];
        cosines[0] = 1;
        double cosine = Math.cos(2 * Math.PI * cycles);
        double sine = Math.sin(2 * Math.PI * cycles);
        for (int k = 1; k <= count; k++) {
            cosines[k] = cosines[k - 1] * cosine - sines[k - 1] * sine;
            sines[k] = sines[k - 1] * cosine + cosines[k - 1] * sine;
        }
        return new double[][] {cosines, sines};
    }

    private void add(double[][] rising, double[][] falling) {
        for (int k = 1; k < ofReal.length; k++) {
            double basis = rising[k % 2 == 1 ? 0 : 1][k] / PLACES;
            double[] real = ofReal[k];
            double[] imaginary = ofImaginary[k];
            for (int l = 1; l < real.length; l++) {
                real[l] += (rising[0][l] - falling[0][l]) * basis;
                imaginary[l] += (rising[1][l] - falling[1][l]) * basis;
            }
        }
    }

    /** The parts of a wave, from real and imaginary parts of its harmonics: index k for harmonic k. */
    double[] parts(double[] real, double[] imaginary) {
        double[] parts = new double[real.length];
        for (int k = 1; k < parts.length; k++) {
            double[] realShares = ofReal[k];
            double[] imaginaryShares = ofImaginary[k];
            double sum = 0;
            for (int l = 1; l < parts.length; l++) {
                sum += real[l] * realShares[l] - imaginary[l] * imaginaryShares[l];
            }
            parts[k] = sum;
        }
        return parts;
    }
}
