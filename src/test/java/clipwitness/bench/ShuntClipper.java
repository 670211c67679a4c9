package clipwitness.bench;

import java.util.Objects;

/**
 * A clipper from a node to ground, fed through a resistance; the output is the node.
 *
 * @param sourceResistance Ω, above 0
 * @param pair             legs to ground
 */
public record ShuntClipper(double sourceResistance, LegPair pair) implements Stage {
    /** Checks the resistance. */
    public ShuntClipper {
        Objects.requireNonNull(pair, "pair");
        if (!(sourceResistance > 0)) {
            throw new IllegalArgumentException("sourceResistance must be above 0 Ω but is " + sourceResistance);
        }
    }

    @Override
    public double outputFor(double drive) {
        return pair.voltageBehind(drive, sourceResistance);
    }
}
