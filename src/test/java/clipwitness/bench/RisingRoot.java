package clipwitness.bench;

import java.util.function.DoubleFunction;

/** Root of a rising function: Newton's steps inside a bracket, halving it where a step leaves it or shrinks too slowly. */
public final class RisingRoot {
    private static final int MOST_STEPS = 300;

    /** A step this small beside its place ends the search: the next one would be a square smaller, far below a double's last place. */
    private static final double LAST_STEP = 1e-13;

    private RisingRoot() {}

    /**
     * The root, about as well as a double resolves the function.
     *
     * @param function rising between the bounds, not above 0 at the lower and not below 0 at the upper one; may be infinite inside
     * @param lower    lower bound, finite
     * @param upper    upper bound, finite
     * @throws IllegalArgumentException if the bounds are not in order
     */
    static double of(DoubleFunction<Point> function, double lower, double upper) {
        if (!(lower <= upper)) {
            throw new IllegalArgumentException("the bounds " + lower + " and " + upper + " are not in order");
        }
        double low = lower;
        double high = upper;
        double x = high;
        double lastStep = high - low;
        for (int i = 0; i < MOST_STEPS; i++) {
            Point here = function.apply(x);
            if (here.value() > 0) {
                high = x;
            } else {
                low = x;
            }
            double next = x - here.value() / here.slope();
            boolean goesWell = next >= low && next <= high && 2 * Math.abs(next - x) <= lastStep;
            if (!goesWell) { // a step that is not a number lands here too
                next = low + (high - low) / 2;
            }
            lastStep = Math.abs(next - x);
            if (lastStep <= LAST_STEP * Math.abs(x)) {
                return next;
            }
            x = next;
        }
        return x;
    }
}
