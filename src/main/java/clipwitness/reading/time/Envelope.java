package clipwitness.reading.time;

/** The record of an envelope: two rows a time stamp, the smallest and the largest value of an interval. */
public final class Envelope {
    private Envelope() {}

    /** The middle of each pair of rows. */
    public static double[] middles(double[] rows) {
        double[] middles = new double[rows.length / 2];
        for (int i = 0; i < middles.length; i++) {
            middles[i] = (rows[2 * i] + rows[2 * i + 1]) / 2;
        }
        return middles;
    }
}
