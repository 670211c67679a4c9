package clipwitness.signal;

/**
 * Amplitudes of lines close to one frequency, fast and within a bound. The record is turned by the frequency in the middle; what is left of the turning
 * of a line beside it is followed by its series to the second order within blocks, and exactly from block to block. With a the largest angle
 * within a block, the third term of the series bounds the error: a³ / 6 of the mean magnitude of the record, twice for an amplitude.
 */
final class LineZoom {
    /** Largest angle between a block's middle and its end, rad. */
    private static final double ANGLE = 0.1;

    /** What rounding adds at most, a share of the bound. */
    private static final double ROUNDING = 1.01;

    private final int samples;
    private final double middle;
    private final double[] centres;
    private final double[][] moments;
    private final double bound;

    /**
     * Prepares a record.
     *
     * @param record its samples
     * @param middle periods over the record of the frequency in the middle
     * @param reach  how far from it lines are asked for, periods over the record
     */
    LineZoom(double[] record, double middle, double reach) {
        this.samples = record.length;
        this.middle = middle;
        int blocks = (int) Math.max(1, Math.min(samples, Math.ceil(Math.PI * reach / ANGLE)));
        centres = new double[blocks];
        moments = new double[6][blocks];
        double magnitude = 0;
        for (int b = 0; b < blocks; b++) {
            int from = (int) ((long) b * samples / blocks);
            int to = (int) ((long) (b + 1) * samples / blocks);
            centres[b] = (from + to) / 2.0 / samples - 0.5;
            magnitude += block(record, from, to, b);
        }
        double length = Math.ceil((double) samples / blocks) / samples;
        double angle = Math.PI * reach * length;
        bound = ROUNDING * 2 * magnitude / samples * angle * angle * angle / 6;
    }

    private double block(double[] record, int from, int to, int b) {
        double step = 2 * Math.PI * middle / samples;
        double turnCosine = Math.cos(step);
        double turnSine = Math.sin(step);
        double start = step * (from + 0.5) - Math.PI * middle;
        double x = Math.cos(start);
        double y = Math.sin(start);
        double magnitude = 0;
        for (int i = from; i < to; i++) {
            double beside = (i + 0.5) / samples - 0.5 - centres[b];
            double cosine = record[i] * x;
            double sine = record[i] * y;
            moments[0][b] += cosine;
            moments[1][b] += sine;
            moments[2][b] += cosine * beside;
            moments[3][b] += sine * beside;
            moments[4][b] += cosine * beside * beside;
            moments[5][b] += sine * beside * beside;
            magnitude += Math.abs(record[i]);
            double next = x * turnCosine - y * turnSine;
            y = x * turnSine + y * turnCosine;
            x = next;
        }
        return magnitude;
    }

    /** By how much an amplitude may be wrong, V. */
    double bound() {
        return bound;
    }

    /** Amplitude of a line of so many periods over the record, V; it must lie within reach. */
    double amplitude(double cycles) {
        double angle = 2 * Math.PI * (cycles - middle);
        double real = 0;
        double imaginary = 0;
        for (int b = 0; b < centres.length; b++) {
            // the sum of a block times exp(-i angle beside): 1 - i angle beside - (angle beside)^2 / 2, of cosine - i
            // sine
            double re = moments[0][b] - angle * moments[3][b] - angle * angle / 2 * moments[4][b];
            double im = -moments[1][b] - angle * moments[2][b] + angle * angle / 2 * moments[5][b];
            double x = Math.cos(angle * centres[b]);
            double y = -Math.sin(angle * centres[b]);
            real += re * x - im * y;
            imaginary += re * y + im * x;
        }
        return 2 * Math.hypot(real, imaginary) / samples;
    }
}
