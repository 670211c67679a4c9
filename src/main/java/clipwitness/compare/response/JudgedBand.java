package clipwitness.compare.response;

import clipwitness.measure.Measured;
import java.util.List;

/**
 * The part of a sweep that is judged. Where a sweep begins and ends its power runs out, and the gain there may be known to less than the limit
 * whatever the unit does: such frequencies at either end are described. Between two that are judged everything is, and so is a change at an end
 * that exceeds limit and uncertainty; where no frequency is known well enough, all are judged.
 *
 * @param first index of the lowest frequency that is judged
 * @param last  index of the highest
 */
record JudgedBand(int first, int last) {
    /**
     * The band of a sweep.
     *
     * @param changes changes of the gain, dB, by rising frequency
     * @param limit   permitted change, dB
     */
    static JudgedBand of(List<Measured> changes, double limit) {
        int first = 0;
        int last = changes.size() - 1;
        while (first <= last && isOpen(changes.get(first), limit)) {
            first++;
        }
        while (last > first && isOpen(changes.get(last), limit)) {
            last--;
        }
        return first <= last ? new JudgedBand(first, last) : new JudgedBand(0, changes.size() - 1);
    }

    /** Whether the frequency of this index is judged. */
    boolean holds(int index) {
        return index >= first && index <= last;
    }

    /** Uncertain beyond the limit, and no change that would show in spite of it. */
    private static boolean isOpen(Measured change, double limit) {
        return change.asValue()
                .map(value -> value.expanded() > limit && Math.abs(value.number()) - value.expanded() <= limit)
                .orElse(false);
    }
}
