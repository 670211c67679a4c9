package clipwitness.bench;

import java.util.Objects;

/**
 * Two legs back to back.
 *
 * @param up   leg that conducts on positive voltage
 * @param down leg that conducts on negative voltage
 */
public record LegPair(ClipperLeg up, ClipperLeg down) {
    /** Checks that both are there; an open leg is a leg. */
    public LegPair {
        Objects.requireNonNull(up, "up");
        Objects.requireNonNull(down, "down");
    }

    /** Voltage in V across the pair behind a source of so many volts and ohms: (E - v)/R = I_up(v) - I_down(-v). */
    public double voltageBehind(double source, double resistance) {
        return RisingRoot.of(
                v -> {
                    Point rising = up.at(v);
                    Point falling = down.at(-v);
                    return new Point(
                            rising.value() - falling.value() + (v - source) / resistance,
                            rising.slope() + falling.slope() + 1 / resistance);
                },
                Math.min(0, source),
                Math.max(0, source));
    }
}
