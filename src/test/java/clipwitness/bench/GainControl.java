package clipwitness.bench;

/**
 * A gain control with a stop resistor below it and a bowed taper: share = e + (1 - e) (b^p - 1)/(b - 1) at position p.
 *
 * @param least share e of the drive that is left at 0 % of the rotation, 0 to 1
 * @param bow   b, above 1; 32 leaves 15 % of the track at half rotation
 */
public record GainControl(double least, double bow) {
    /** Checks the ranges. */
    public GainControl {
        if (!(least >= 0 && least <= 1 && bow > 1)) {
            throw new IllegalArgumentException("no gain control leaves %s with a bow of %s".formatted(least, bow));
        }
    }

    /** Share of the drive at a position from 0 to 1; the end stops hold what would go beyond. */
    public double shareAt(double position) {
        double held = Math.max(0, Math.min(1, position));
        return least + (1 - least) * (Math.pow(bow, held) - 1) / (bow - 1);
    }
}
