package clipwitness.measure.capture;

import clipwitness.capture.Samples;
import java.util.HashSet;
import java.util.Set;

/**
 * Runs of samples on one code.
 *
 * @param starts  first sample of each run
 * @param longest length of the longest run
 * @param inside  samples that lie in runs
 * @param strays  samples off the code that stand between two samples on it
 */
record Runs(Set<Integer> starts, int longest, int inside, int strays) {
    private static final double VANISHING = 0.01;

    /** Runs of at least so many samples within half a step of a level. */
    static Runs on(Samples samples, double level, double step, int shortest) {
        Set<Integer> starts = new HashSet<>();
        int longest = 0;
        int inside = 0;
        int strays = 0;
        int length = 0;
        for (int i = 0; i <= samples.size(); i++) {
            boolean on = i < samples.size() && Math.abs(samples.at(i) - level) < step / 2;
            if (on) {
                length++;
                continue;
            }
            if (length >= shortest) {
                starts.add(i - length);
                inside += length;
                longest = Math.max(longest, length);
                if (i + 1 < samples.size() && Math.abs(samples.at(i + 1) - level) < step / 2) {
                    strays++;
                }
            }
            length = 0;
        }
        return new Runs(starts, longest, inside, strays);
    }

    /** Number of periods in which a run begins. */
    int periodsWithRun(double period) {
        return (int)
                starts.stream().mapToLong(s -> (long) (s / period)).distinct().count();
    }

    /** Whether next to no sample leaves the code where the signal stands on it. */
    boolean noiseVanishes() {
        return strays <= VANISHING * inside;
    }
}
