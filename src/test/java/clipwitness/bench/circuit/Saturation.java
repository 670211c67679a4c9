package clipwitness.bench.circuit;

import clipwitness.bench.Stage;

/**
 * An amplifier that runs out of supply: linear, then a short bend, then flat. y = g x / (1 + |g x / r|^8)^(1/8) with the rail r of that
 * side.
 *
 * @param gain g, a ratio; below 0 it inverts
 * @param up   highest output in V, above 0; may be infinite
 * @param down lowest output in V as a positive number; may be infinite
 */
record Saturation(double gain, double up, double down) implements Stage {
    private static final int BEND = 8;

    @Override
    public double outputFor(double drive) {
        double linear = gain * drive;
        double rail = linear > 0 ? up : down;
        return linear / Math.pow(1 + Math.pow(Math.abs(linear / rail), BEND), 1.0 / BEND);
    }
}
