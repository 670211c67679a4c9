package clipwitness.signal;

/**
 * Sums of the basis itself over the samples that have a value, E_pm = sum (u_n / N)^p e^(i m w u_n) for p = 0, 1, 2, from which every
 * inner product of two basis functions follows. A full record has closed forms, the Dirichlet kernel D(a) = sin(N a / 2) / sin(a / 2)
 * and its derivatives; gaps are taken off one by one.
 */
final class BasisSums {
    private final double[][] real;
    private final double[][] imaginary;

    /**
     * @param series          samples, of which only number and gaps matter
     * @param cyclesPerSample frequency of the fundamental over the sample rate
     * @param order           highest multiple m
     */
    BasisSums(FitSamples series, double cyclesPerSample, int order) {
        real = new double[3][order + 1];
        imaginary = new double[3][order + 1];
        double n = series.size();
        real[0][0] = n;
        real[2][0] = (n * n - 1) / (12 * n);
        for (int m = 1; m <= order; m++) {
            closedForms(m, n, 2 * Math.PI * m * cyclesPerSample);
        }
        for (int gap : series.gaps()) {
            takeOff(gap - (n - 1) / 2, n, 2 * Math.PI * cyclesPerSample);
        }
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

    /**
     * Inner products of the basis functions 1, cos, sin, cos 2, sin 2, .. weighted with (u / N)^power.
     *
     * @param power  0, 1 or 2
     * @param orders number of harmonics, at most half the order of the sums
     */
    double[][] innerProducts(int power, int orders) {
        int size = 2 * orders + 1;
        double[][] products = new double[size][size];
        for (int p = 0; p < size; p++) {
            for (int q = p; q < size; q++) {
                products[p][q] = innerProduct(power, p, q);
                products[q][p] = products[p][q];
            }
        }
        return products;
    }

    private double innerProduct(int power, int p, int q) {
        int j = (p + 1) / 2;
        int k = (q + 1) / 2;
        boolean pIsSine = p > 0 && p % 2 == 0;
        boolean qIsSine = q > 0 && q % 2 == 0;
        if (pIsSine && qIsSine) {
            return (cosine(power, j - k) - cosine(power, j + k)) / 2;
        }
        if (!pIsSine && !qIsSine) {
            return (cosine(power, j - k) + cosine(power, j + k)) / 2;
        }
        int difference = pIsSine ? j - k : k - j;
        return (sine(power, j + k) + sine(power, difference)) / 2;
    }

    private double cosine(int power, int m) {
        return real[power][Math.abs(m)];
    }

    private double sine(int power, int m) {
        return Math.signum(m) * imaginary[power][Math.abs(m)];
    }
}
