package clipwitness.signal;

/**
 * Decomposition A = L L' of a small symmetric positive matrix. The linear algebra of the library copies and checks its matrices, which costs more than the work
 * itself where the matrix has three rows and there are ten thousand of them, or where each column of an inverse is asked for.
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
                double[] row = matrix[i];
                double[] other = matrix[j];
                double sum = row[j];
                for (int k = 0; k < j; k++) {
                    sum -= row[k] * other[k];
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
        return solved(right.clone(), 0);
    }

    /** Solves in place, the first entries of the right side being 0. */
    private double[] solved(double[] x, int first) {
        forward(x, first);
        for (int i = x.length - 1; i >= 0; i--) {
            double[] row = lower[i];
            double value = x[i] / row[i];
            x[i] = value;
            for (int k = 0; k < i; k++) {
                x[k] -= row[k] * value;
            }
        }
        return x;
    }

    /** Solves L y = x in place. */
    private void forward(double[] x, int first) {
        for (int i = first; i < x.length; i++) {
            double[] row = lower[i];
            double sum = x[i];
            for (int k = first; k < i; k++) {
                sum -= row[k] * x[k];
            }
            x[i] = sum / row[i];
        }
    }

    /** The inverse of A. */
    double[][] inverse() {
        double[][] inverse = new double[lower.length][];
        for (int i = 0; i < inverse.length; i++) {
            inverse[i] = column(i);
        }
        return inverse;
    }

    /** A column of the inverse of A. */
    private double[] column(int i) {
        double[] unit = new double[lower.length];
        unit[i] = 1;
        return solved(unit, i);
    }

    /**
     * The first rows and columns of the inverse of A: products of the columns of the inverse of L.
     *
     * @param size how many
     */
    double[][] firstOfInverse(int size) {
        double[][] columns = new double[size][];
        double[][] first = new double[size][size];
        for (int i = 0; i < size; i++) {
            columns[i] = new double[lower.length];
            columns[i][i] = 1;
            forward(columns[i], i);
            for (int j = 0; j <= i; j++) {
                first[i][j] = product(columns[i], columns[j], i);
                first[j][i] = first[i][j];
            }
        }
        return first;
    }

    private static double product(double[] a, double[] b, int from) {
        double sum = 0;
        for (int i = from; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
