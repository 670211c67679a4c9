package clipwitness.measure;

import clipwitness.quantity.Unit;
import clipwitness.signal.MeanCycle;

/**
 * Where the area of the positive half-wave lies: (its centroid - its middle) / its length, in percent. The half-wave is the stretch of
 * swing above zero around the upper peak. 0 for a sine; negative when it leans early (a fast edge, then a sag), positive when late
 * (a slow rise, then a drop); a right-angled ramp has 16.67 %.
 */
final class Lean {
    private Lean() {}

    static Measured of(FittedWave wave, Extreme upper) {
        MeanCycle cycle = wave.cycle();
        int bins = cycle.bins();
        double mean = wave.fit().mean();
        double[] swing = cycle.values();
        for (int i = 0; i < bins; i++) {
            swing[i] -= mean;
        }
        int top = Math.min((int) (upper.phase() * bins), bins - 1);
        int from = top;
        int to = top;
        while (top - from < bins && swing[Math.floorMod(from - 1, bins)] >= 0) {
            from--;
        }
        while (to - top < bins && swing[(to + 1) % bins] >= 0) {
            to++;
        }
        if (to - from < 2 || to - from >= bins) {
            return Measured.refused(Unit.PERCENT, "the upper half-wave is not to be told from the lower one");
        }
        double before = swing[Math.floorMod(from - 1, bins)];
        double after = swing[(to + 1) % bins];
        double first = swing[Math.floorMod(from, bins)];
        double last = swing[to % bins];
        double start = from - first / (first - before);
        double end = to + last / (last - after);
        double area = 0;
        double moment = 0;
        double x = start;
        double y = 0;
        for (int i = from; i <= to + 1; i++) {
            double nextX = i > to ? end : i;
            double nextY = i > to ? 0 : swing[Math.floorMod(i, bins)];
            double width = nextX - x;
            area += width * (y + nextY) / 2;
            moment += width * (x * (2 * y + nextY) + nextX * (y + 2 * nextY)) / 6;
            x = nextX;
            y = nextY;
        }
        double length = end - start;
        double centroid = moment / area;
        double lean = (centroid - (start + end) / 2) / length;
        double sum = 0;
        for (int i = from; i <= to; i++) {
            sum += (i - centroid) * (i - centroid);
        }
        double edge = Math.hypot((0.5 - lean) / (first - before), (0.5 + lean) / (last - after));
        double noise = cycle.binUncertainty() * Math.hypot(Math.sqrt(sum) / area, edge) / length;
        return Measured.withNoise(100 * lean, Unit.PERCENT, 100 * noise);
    }
}
