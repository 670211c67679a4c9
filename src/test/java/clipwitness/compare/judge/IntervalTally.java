package clipwitness.compare.judge;

import clipwitness.measure.Measured;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Counts how many intervals hold the truth, and how wide they are. */
final class IntervalTally {
    private final List<Double> widths = new ArrayList<>();
    private int held;
    private double errors;

    void add(Measured.Value value, double truth) {
        double width = value.expandedUncertainty().orElseThrow();
        double error = Math.abs(value.number() - truth);
        held += error <= width ? 1 : 0;
        errors += error * error;
        widths.add(width);
    }

    /** Share of the intervals that hold the truth, percent. */
    double share() {
        return 100.0 * held / widths.size();
    }

    /** Median half width. */
    double width() {
        List<Double> sorted = new ArrayList<>(widths);
        Collections.sort(sorted);
        return sorted.get(sorted.size() / 2);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%5.1f %% of %5d hold, U %.4f, rms error %.4f",
                share(),
                widths.size(),
                width(),
                Math.sqrt(errors / widths.size()));
    }
}
