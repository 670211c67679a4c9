package clipwitness.measure;

import clipwitness.quantity.Decibels;
import java.util.ArrayList;
import java.util.List;

/**
 * One of the two levels between which a change in dB lies.
 *
 * @param level   where it stands, dB
 * @param ends    how far the scaled contributions carry it
 * @param first   the same to first order, dB
 * @param scaled  contributions that together are as wide as the ends, in any one unit
 * @param further contributions in dB that are no part of the ends
 */
public record LevelSide(
        double level, LevelEnds ends, double first, List<Contribution> scaled, List<Contribution> further) {
    /** Copies what it is given. */
    public LevelSide {
        scaled = List.copyOf(scaled);
        further = List.copyOf(further);
    }

    /** A level whose noise was carried to dB to first order; everything else is in dB by nature. The ± of a bound is that of its upper end already, and stands for both. */
    public static LevelSide ofFirstOrder(Measured.Value level, List<Contribution> further) {
        List<Contribution> noise =
                level.budget().stream().filter(c -> c.source() == Source.NOISE).toList();
        List<Contribution> rest = new ArrayList<>(level.without(Source.NOISE).budget());
        rest.addAll(further);
        double expanded = expanded(noise);
        LevelEnds ends = level.isUpperBound() ? new LevelEnds(expanded, expanded) : LevelEnds.ofFirstOrder(expanded);
        return new LevelSide(level.number(), ends, expanded, noise, rest);
    }

    /**
     * A level of an amount that is near its uncertainty.
     *
     * @param level  where the level stands, dB
     * @param amount the amount with everything that makes it uncertain, 0 or more and not exact
     */
    public static LevelSide ofAmount(double level, Measured.Value amount) {
        double least = Math.max(amount.number(), amount.standardUncertainty());
        return new LevelSide(
                level,
                LevelEnds.of(level, amount),
                Decibels.PER_RELATIVE_AMPLITUDE * amount.expanded() / least,
                amount.budget(),
                List.of());
    }

    /** Contributions in dB towards one end; where that is open, so far that a change of this size may be none. */
    List<Contribution> budget(boolean up, double size) {
        double width = Double.isFinite(ends.to(up)) ? ends.to(up) : size + first;
        double expanded = expanded(scaled);
        List<Contribution> budget = new ArrayList<>(further);
        if (expanded > 0) {
            scaled.forEach(c -> budget.add(c.times(width / expanded)));
        }
        return budget;
    }

    private static double expanded(List<Contribution> budget) {
        return Budget.coverageFactor(budget) * Budget.standardUncertainty(budget);
    }
}
