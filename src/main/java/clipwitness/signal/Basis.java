package clipwitness.signal;

/**
 * Mean and harmonics of one frequency over the samples of a record: the inner products of all pairs of them, plain and weighted with time.
 * Channels with the same gaps share one. Vectors stand in the order 1, cos, sin, cos 2, sin 2, ..
 *
 * <p>The inner products follow from the sums of the basis itself over the samples that have a value, E_pm = sum (u_n / N)^p e^(i m w u_n)
 * for p = 0, 1, 2. A full record has closed forms, the Dirichlet kernel D(a) = sin(N a / 2) / sin(a / 2) and its derivatives; gaps are taken
 * off one by one. In a full record no cosine shares anything with a sine, so the normal equations are two systems of half the size.
 */
final class Basis {
    private static final double POSITIVE = 1e-13;

    private final int orders;
    private final double[][] real;
    private final double[][] imaginary;
    private final SmallCholesky cosines;
    private final SmallCholesky sines;

    /**
     * The basis of a record.
     *
     * @param series          samples, of which only number and gaps matter
     * @param cyclesPerSample frequency of the fundamental over the sample rate
     * @param orders          number of harmonics
     */
    Basis(FitSamples series, double cyclesPerSample, int orders) {
        this.orders = orders;
        real = new double[3][2 * orders + 1];
        imaginary = new double[3][2 * orders + 1];
        double n = series.size();
        real[0][0] = n;
        real[2][0] = (n * n - 1) / (12 * n);
        for (int m = 1; m <= 2 * orders; m++) {
            closedForms(m, n, 2 * Math.PI * m * cyclesPerSample);
        }
        int[] gaps = series.gaps();
        for (int gap : gaps) {
            takeOff(gap - (n - 1) / 2, n, 2 * Math.PI * cyclesPerSample);
        }
        boolean apart = gaps.length == 0;
        cosines = new SmallCholesky(apart ? block(0, 1) : all(), POSITIVE);
        sines = apart ? new SmallCholesky(block(1, -1), POSITIVE) : null;
    }

    private void closedForms(int m, double n, double angle) {
        double sinN = Math.sin(n * angle / 2);
        double cosN = Math.cos(n * angle / 2);
        double sin1 = Math.sin(angle / 2);
        double cos1 = Math.cos(angle / 2);
        double kernel = sinN / sin1;
        double cotangent = cos1 / sin1;
        double slope = (n * cosN / sin1 - kernel * cotangent) / 2;
        double curvature =
                (-n * n * kernel - 2 * n * cosN / sin1 * cotangent + kernel * (1 + 2 * cotangent * cotangent)) / 4;
        real[0][m] = kernel;
        imaginary[1][m] = -slope / n;
        real[2][m] = -curvature / (n * n);
    }

    private void takeOff(double u, double n, double angle) {
        for (int m = 0; m < real[0].length; m++) {
            double cos = Math.cos(m * angle * u);
            double sin = Math.sin(m * angle * u);
            double weight = 1;
            for (int p = 0; p < 3; p++) {
                real[p][m] -= weight * cos;
                imaginary[p][m] -= weight * sin;
                weight *= u / n;
            }
        }
    }

    /** Inner products of mean and cosines, or of sines, the lower triangle. */
    private double[][] block(int first, int sign) {
        int size = orders + 1 - first;
        double[] sums = real[0];
        double[][] products = new double[size][size];
        for (int j = 0; j < size; j++) {
            for (int k = 0; k <= j; k++) {
                products[j][k] = (sums[j - k] + sign * sums[j + k + 2 * first]) / 2;
            }
        }
        return products;
    }

    /** Inner products of all functions. */
    private double[][] all() {
        double[][] products = new double[2 * orders + 1][];
        double[] unit = new double[products.length];
        for (int i = 0; i < products.length; i++) {
            unit[i] = 1;
            products[i] = times(0, unit);
            unit[i] = 0;
        }
        return products;
    }

    /**
     * The matrix of inner products weighted with (u / N)^power, times a vector.
     *
     * @param power 0, 1 or 2
     */
    double[] times(int power, double[] vector) {
        double[] re = real[power];
        double[] im = imaginary[power];
        double[] product = new double[vector.length];
        product[0] = re[0] * vector[0];
        for (int j = 1; j <= orders; j++) {
            product[0] += re[j] * vector[2 * j - 1] + im[j] * vector[2 * j];
            double ofCosine = 2 * re[j] * vector[0];
            double ofSine = 2 * im[j] * vector[0];
            for (int k = 1; k <= orders; k++) {
                double cosine = vector[2 * k - 1];
                double sine = vector[2 * k];
                int apart = Math.abs(j - k);
                double turned = k > j ? im[apart] : -im[apart];
                ofCosine += (re[apart] + re[j + k]) * cosine + (im[j + k] + turned) * sine;
                ofSine += (im[j + k] - turned) * cosine + (re[apart] - re[j + k]) * sine;
            }
            product[2 * j - 1] = ofCosine / 2;
            product[2 * j] = ofSine / 2;
        }
        return product;
    }

    /** The coefficients whose inner products with the basis are these. */
    double[] solve(double[] products) {
        if (sines == null) {
            return cosines.solve(products);
        }
        double[] ofCosines = new double[orders + 1];
        double[] ofSines = new double[orders];
        for (int i = 0; i < products.length; i++) {
            (isSine(i) ? ofSines : ofCosines)[place(i)] = products[i];
        }
        double[] c = cosines.solve(ofCosines);
        double[] s = sines.solve(ofSines);
        double[] solution = new double[products.length];
        for (int i = 0; i < solution.length; i++) {
            solution[i] = (isSine(i) ? s : c)[place(i)];
        }
        return solution;
    }

    /** The inverse of the matrix of inner products, for the mean and so many harmonics. */
    double[][] inverse(int harmonics) {
        int size = 2 * harmonics + 1;
        if (sines == null) {
            return cosines.firstOfInverse(size);
        }
        double[][] c = cosines.firstOfInverse(harmonics + 1);
        double[][] s = sines.firstOfInverse(harmonics);
        double[][] inverse = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                if (isSine(i) == isSine(j)) {
                    inverse[i][j] = (isSine(i) ? s : c)[place(i)][place(j)];
                }
            }
        }
        return inverse;
    }

    private static boolean isSine(int function) {
        return function > 0 && function % 2 == 0;
    }

    /** Place among the functions of its kind. */
    private static int place(int function) {
        return isSine(function) ? function / 2 - 1 : (function + 1) / 2;
    }
}
