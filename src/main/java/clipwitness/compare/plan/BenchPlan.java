package clipwitness.compare.plan;

import clipwitness.job.JobSheet;
import java.util.List;

/**
 * What to capture, and what such captures can show.
 *
 * @param sheet     what it is made for
 * @param stated    whether that is a job's own sheet, not the usual one
 * @param frequency of the test tone, Hz
 * @param level     of the test tone, V peak
 * @param gains     positions of the gain control, percent of its rotation
 * @param wave      record of a wave
 * @param runs      how many times positions between the end stops are to be set
 * @param reach     what can be shown with these, limit by limit
 * @param noise     record without a signal
 * @param sweep     record of a frequency response
 */
public record BenchPlan(
        JobSheet sheet,
        boolean stated,
        double frequency,
        double level,
        List<Double> gains,
        WaveRecord wave,
        int runs,
        List<Reach> reach,
        LongRecord noise,
        LongRecord sweep) {
    /** Copies what it is given. */
    public BenchPlan {
        gains = List.copyOf(gains);
        reach = List.copyOf(reach);
    }

    /**
     * A record of a wave.
     *
     * @param periods of the test tone
     * @param samples number of samples
     * @param screen  share of the screen's height that the wave must fill at least, 0 to 1
     */
    public record WaveRecord(int periods, int samples, double screen) {}

    /**
     * A long record.
     *
     * @param seconds  length, s
     * @param rate     samples a second, Hz
     * @param reach    what can be shown with it
     */
    public record LongRecord(double seconds, double rate, List<Reach> reach) {
        /** Copies what it is given. */
        public LongRecord {
            reach = List.copyOf(reach);
        }
    }
}
