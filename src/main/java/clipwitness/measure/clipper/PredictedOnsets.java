package clipwitness.measure.clipper;

import clipwitness.measure.Measured;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import clipwitness.signal.Root;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Onsets of a curve that is known at every input, by the definition of measured ones (measurement book, section 2): 1 dB short of the line of the cubic through the
 * curve over 0.75 of the smaller onset, repeated until it stands; the first window is 15 % of the input's amplitude, none is under 5 %.
 *
 * @param rising whether the curve rises at the input's mean
 * @param up     where the output goes up, over the input's amplitude; empty where not reached
 * @param down   the other side
 */
record PredictedOnsets(boolean rising, OptionalDouble up, OptionalDouble down) {
    private static final double FIRST_WINDOW = 0.15;
    private static final double SMALLEST_WINDOW = 0.05;
    private static final double SHARE_OF_ONSET = 0.75;
    private static final double STANDS = 1e-4;
    private static final int MOST_ROUNDS = 40;
    private static final int ROUNDS_AT_FULL_STEP = 10;
    private static final double ONE_DECIBEL_SHORT = Decibels.toAmplitude(-1);

    /** Places of one side, from near the peak inwards by a constant ratio. */
    private static final double OUTERMOST = 0.99;

    private static final double INNERMOST = 0.01;
    private static final double RATIO = 0.95;

    /** Half of the places over a window: they lie evenly in phase, as the samples of a record do. */
    private static final int HALF = 24;

    /** The onsets of a curve over -1 to 1. */
    static PredictedOnsets of(DoubleUnaryOperator curve) {
        double window = FIRST_WINDOW;
        for (int round = 0; ; round++) {
            double[] line = line(curve, window);
            if (!(line[1] > 0)) {
                return new PredictedOnsets(false, OptionalDouble.empty(), OptionalDouble.empty());
            }
            OptionalDouble up = onset(x -> curve.applyAsDouble(x) - line[0], line[1]);
            OptionalDouble down = onset(x -> line[0] - curve.applyAsDouble(-x), line[1]);
            double next = Math.max(SMALLEST_WINDOW, SHARE_OF_ONSET * Math.min(up.orElse(1), down.orElse(1)));
            if (Math.abs(next - window) < STANDS * window || round == MOST_ROUNDS) {
                return new PredictedOnsets(true, up, down);
            }
            window = round < ROUNDS_AT_FULL_STEP ? next : (next + window) / 2;
        }
    }

    /** Value and slope in the middle of the cubic through the curve over a window: even and odd powers are fitted each by themselves. */
    private static double[] line(DoubleUnaryOperator curve, double window) {
        double[] powers = new double[7];
        double[] right = new double[4];
        double widest = Math.asin(Math.min(1, window));
        for (int i = 0; i < HALF; i++) {
            double x = Math.sin(widest * (i + 0.5) / HALF);
            double z = x / window;
            double above = curve.applyAsDouble(x);
            double below = curve.applyAsDouble(-x);
            for (int p = 0; p < powers.length; p += 2) {
                powers[p] += 2 * Math.pow(z, p);
            }
            for (int p = 0; p < right.length; p++) {
                right[p] += (p % 2 == 0 ? above + below : above - below) * Math.pow(z, p);
            }
        }
        double even = powers[0] * powers[4] - powers[2] * powers[2];
        double odd = powers[2] * powers[6] - powers[4] * powers[4];
        return new double[] {
            (right[0] * powers[4] - right[2] * powers[2]) / even,
            (right[1] * powers[6] - right[3] * powers[4]) / odd / window
        };
    }

    /** The last place, looked at from the peak inwards, beyond which a side that rises from 0 stays 1 dB short of its line. */
    private static OptionalDouble onset(DoubleUnaryOperator side, double slope) {
        DoubleUnaryOperator excess = x -> side.applyAsDouble(x) - ONE_DECIBEL_SHORT * slope * x;
        double outer = OUTERMOST;
        if (excess.applyAsDouble(outer) >= 0) {
            return OptionalDouble.empty();
        }
        double inner = outer;
        while (inner > INNERMOST && excess.applyAsDouble(inner) < 0) {
            outer = inner;
            inner *= RATIO;
        }
        OptionalDouble found = Root.between(excess, inner, outer);
        return found.isPresent() ? found : OptionalDouble.of(inner);
    }

    /** Onset where the output goes up, V, at an amplitude of the input, V. */
    Measured up(double amplitude) {
        return measured(up, amplitude);
    }

    /** Onset where the output goes down, V, at an amplitude of the input, V. */
    Measured down(double amplitude) {
        return measured(down, amplitude);
    }

    private Measured measured(OptionalDouble onset, double amplitude) {
        return onset.isPresent()
                ? Measured.of(onset.getAsDouble() * amplitude, Unit.VOLT)
                : Measured.refused(Unit.VOLT, rising ? FigureReason.NOT_REACHED : FigureReason.OUTPUT_NOT_RISING);
    }
}
