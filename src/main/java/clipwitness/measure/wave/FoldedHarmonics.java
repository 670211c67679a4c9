package clipwitness.measure.wave;

import clipwitness.signal.MeanCycle;

/**
 * How far the harmonics of a record may be off because higher ones fold onto them. Sampled n times a period, harmonic n - k looks like harmonic k
 * (Nyquist); where n is close to a whole number, and so every period is sampled at the same places, nothing in the record tells them apart. What lies above
 * half the sample rate is not seen: its amplitudes are taken to fall with the order by the power by which those below it fall, from 1 (a wave with jumps)
 * to 2 (one with corners).
 */
final class FoldedHarmonics {
    private static final double STANDS_OUT = 3;

    /** Three in each third. */
    private static final int FEWEST = 9;

    private static final double JUMPS = 1;
    private static final double CORNERS = 2;

    private final double perPeriod;
    private final double level;
    private final double power;

    /**
     * What may be folded onto a cycle; of fewer than nine harmonics how they fall cannot be said, and nothing is.
     *
     * @param cycle a cycle, with the harmonics that it was folded by
     */
    FoldedHarmonics(MeanCycle cycle) {
        perPeriod = 1 / cycle.cyclesPerSample();
        double drift = Math.abs(perPeriod - Math.rint(perPeriod)) * cycle.samples() / perPeriod;
        int third = Math.max(1, cycle.harmonics() / 3);
        int highest = largest(cycle, 2 * third, cycle.harmonics());
        boolean seen = cycle.harmonics() >= FEWEST
                && cycle.amplitude(highest)
                        > STANDS_OUT * cycle.noise() * Math.sqrt(4.0 / Math.max(1, cycle.samples()));
        int middle = largest(cycle, third, 2 * third - 1);
        double fall =
                Math.log(cycle.amplitude(middle) / cycle.amplitude(highest)) / Math.log((double) highest / middle);
        power = fall > JUMPS ? Math.min(fall, CORNERS) : JUMPS;
        level = drift < 1 && seen ? cycle.amplitude(highest) * Math.pow(highest, power) : 0;
    }

    private static int largest(MeanCycle cycle, int from, int to) {
        int largest = Math.min(from, cycle.harmonics());
        for (int k = largest + 1; k <= to; k++) {
            largest = cycle.amplitude(k) > cycle.amplitude(largest) ? k : largest;
        }
        return largest;
    }

    /** Whether nothing is seen that could fold. */
    boolean none() {
        return level == 0;
    }

    /** How far the amplitude of a harmonic, or the mean (order 0), may be off: a bound, V. */
    double bound(int order) {
        return level * (Math.pow(perPeriod - order, -power) + Math.pow(perPeriod + order, -power));
    }
}
