package clipwitness.signal;

/**
 * Decomposition A = L L' of a small symmetric positive matrix. The linear algebra of the library copies and checks its matrices, which costs more than the work
 * itself where the matrix has three rows and there are ten thousand of them.
 */
final class SmallCholesky {
    private final double[][] lower;

    /**
     * Decomposes a matrix.
     *
     * @param matrix symmetric; overwritten
     * @param least  least pivot
     * @throws IllegalArgumentException where a pivot is not above that: the matrix is not positive
     */
    SmallCholesky(double[][] matrix, double least) {
        for (int i = 0; i < matrix.length; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= matrix[i][k] * matrix[j][k];
                }
                if (i == j && !(sum > least)) {
                    throw new IllegalArgumentException("not a positive matrix: pivot " + sum + " in row " + i);
                }
                matrix[i][j] = i == j ? Math.sqrt(sum) : sum / matrix[j][j];
            }
        }
        lower = matrix;
    }

    /** The x of A x = b. */
    double[] solve(double[] right) {
        double[] x = right.clone();
        for (int i = 0; i < x.length; i++) {
            for (int k = 0; k < i; k++) {
                x[i] -= lower[i][k] * x[k];
            }
            x[i] /= lower[i][i];
        }
        for (int i = x.length - 1; i >= 0; i--) {
            for (int k = i + 1; k < x.length; k++) {
                x[i] -= lower[k][i] * x[k];
            }
            x[i] /= lower[i][i];
        }
        return x;
    }

    /** The inverse of A. */
    double[][] inverse() {
        double[][] inverse = new double[lower.length][];
        for (int i = 0; i < inverse.length; i++) {
            double[] unit = new double[lower.length];
            unit[i] = 1;
            inverse[i] = solve(unit);
        }
        return inverse;
    }
}
