package clipwitness.measure;

import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Change of one level to another, dB. Its interval is made of the ends of both: the distances of the ends from where the levels stand, combined as
 * independent for each direction by itself (G. Y. Zou and A. Donner, Statistics in Medicine 27, 2008, 1693). The expanded uncertainty is the wider of the two. Near
 * the noise it is the one towards no change, where that lies outside: the size less it is what the change is at least.
 */
public final class LevelChange {
    /** Up to here the wider of the two distances is the expanded uncertainty, dB: they differ by less than a third, and a decision on a limit may ask for either end. */
    private static final double BOTH_HELD = 2;

    private LevelChange() {}

    /**
     * The change.
     *
     * @param before  the earlier level
     * @param after   the later level
     * @param further contributions of both together, dB
     */
    public static Measured.Value of(LevelSide before, LevelSide after, List<Contribution> further) {
        double change = after.level() - before.level();
        Measured.Value near = towards(change < 0, change, before, after, further);
        if (Math.abs(change) > near.expanded() && near.expanded() > BOTH_HELD) {
            return near;
        }
        Measured.Value far = towards(change >= 0, change, before, after, further);
        return far.expanded() > near.expanded() ? far : near;
    }

    private static Measured.Value towards(
            boolean up, double change, LevelSide before, LevelSide after, List<Contribution> further) {
        List<Contribution> parts = new ArrayList<>(before.budget(!up, Math.abs(change)));
        parts.addAll(after.budget(up, Math.abs(change)));
        parts.addAll(further);
        return new Measured.Value(change, Unit.DECIBEL, Budget.bySource(parts), false);
    }
}
