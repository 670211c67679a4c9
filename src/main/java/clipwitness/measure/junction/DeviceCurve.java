package clipwitness.measure.junction;

import java.util.List;
import java.util.stream.IntStream;

/** A device's measured voltage over its current: the mean of all sweeps that reach it. Never extrapolated. */
public final class DeviceCurve {
    private static final double STEPS_PER_DECADE = 20;

    private final List<Sweep> sweeps;
    private final int firstStep;
    private final double[] atSteps;

    DeviceCurve(List<Sweep> sweeps) {
        if (sweeps.isEmpty()) {
            throw new IllegalArgumentException("a curve needs a sweep");
        }
        this.sweeps = List.copyOf(sweeps);
        this.firstStep = (int) Math.ceil(Math.log10(lowest()) * STEPS_PER_DECADE);
        int last = (int) Math.floor(Math.log10(highest()) * STEPS_PER_DECADE);
        this.atSteps = IntStream.rangeClosed(firstStep, last)
                .mapToDouble(DeviceCurve::currentOfStep)
                .map(c -> reaches(c) ? voltageAt(c) : Double.NaN)
                .takeWhile(v -> !Double.isNaN(v)) // sweeps that do not overlap leave a gap: what is below it counts
                .toArray();
    }

    /** Current of a step, A. */
    static double currentOfStep(int step) {
        return Math.pow(10, step / STEPS_PER_DECADE);
    }

    /** First of the steps of current that the curve reaches; step k is 10^(k / 20) A. */
    int firstStep() {
        return firstStep;
    }

    /** Last of the steps of current that the curve reaches; below the first where it reaches none. */
    int lastStep() {
        return firstStep + atSteps.length - 1;
    }

    /** Voltage at a step of current, V. */
    double voltageAtStep(int step) {
        return atSteps[step - firstStep];
    }

    /** Lowest current, A. */
    public double lowest() {
        return sweeps.stream().mapToDouble(Sweep::lowest).min().orElseThrow();
    }

    /** Highest current, A. */
    public double highest() {
        return sweeps.stream().mapToDouble(Sweep::highest).max().orElseThrow();
    }

    /** Whether any sweep reaches a current, A. */
    public boolean reaches(double current) {
        for (Sweep s : sweeps) {
            if (s.reaches(current)) {
                return true;
            }
        }
        return false;
    }

    /**
     * Voltage at a current.
     *
     * @param current A
     * @return V
     * @throws IllegalArgumentException if no sweep reaches it
     */
    public double voltageAt(double current) {
        double sum = 0;
        int count = 0;
        for (Sweep s : sweeps) {
            if (s.reaches(current)) {
                sum += s.voltageAt(current);
                count++;
            }
        }
        if (count == 0) {
            throw new IllegalArgumentException("no sweep reaches " + current + " A");
        }
        return sum / count;
    }

    /** The sweeps that reach a current, A. */
    List<Sweep> reaching(double current) {
        return sweeps.stream().filter(s -> s.reaches(current)).toList();
    }

    /** All sweeps. */
    List<Sweep> sweeps() {
        return sweeps;
    }
}
