package clipwitness.figure.chart;

import clipwitness.capture.Samples;
import java.util.Arrays;

/**
 * A curve thinned to what paper can show: the curve itself where it has few points, else in each of many equal parts its first,
 * lowest, highest and last point, in their order. Nothing is averaged: every extreme and every corner stays where it was.
 */
final class ThinnedCurve {
    /** Points that a drawn curve has at most. */
    static final int MOST_POINTS = 2000;

    private static final int LEAST_POINTS = 200;

    /** Three parts a point: 216 to the inch. */
    private static final double POINTS_A_POINT = 12;

    private static final int PER_PART = 4;

    private ThinnedCurve() {}

    /** Indices of the points to draw over a width in points, rising: never more than print can show there. */
    static int[] indices(Samples values, double width) {
        return thinned(values, (int) Math.max(LEAST_POINTS, Math.min(MOST_POINTS, POINTS_A_POINT * width)));
    }

    /** Indices of the points to draw, rising. */
    static int[] indices(Samples values) {
        return thinned(values, MOST_POINTS);
    }

    private static int[] thinned(Samples values, int most) {
        int count = values.size();
        if (count <= most) {
            int[] all = new int[count];
            Arrays.setAll(all, i -> i);
            return all;
        }
        int parts = most / PER_PART;
        int[] chosen = new int[parts * PER_PART];
        int used = 0;
        for (int part = 0; part < parts; part++) {
            int from = (int) ((long) part * count / parts);
            int to = (int) ((long) (part + 1) * count / parts);
            for (int index : corners(values, from, to)) {
                if (used == 0 || chosen[used - 1] < index) {
                    chosen[used++] = index;
                }
            }
        }
        return Arrays.copyOf(chosen, used);
    }

    private static int[] corners(Samples values, int from, int to) {
        int lowest = from;
        int highest = from;
        for (int i = from; i < to; i++) {
            if (values.at(i) < values.at(lowest) || Double.isNaN(values.at(lowest))) {
                lowest = i;
            }
            if (values.at(i) > values.at(highest) || Double.isNaN(values.at(highest))) {
                highest = i;
            }
        }
        return new int[] {from, Math.min(lowest, highest), Math.max(lowest, highest), to - 1};
    }
}
