package clipwitness.measure.junction;

import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How far two curves lie apart in voltage over the currents that both reach, twenty to the decade: root mean square of the
 * differences, less their noise, which is known from differences that are next to each other: s² = mean((d' - d)²) / 2.
 */
public final class CurveDistance {
    private CurveDistance() {}

    /** Lowest and highest current, A, that both curves reach; nothing where fewer than two steps of current are common. */
    public static Optional<CurrentRange> common(DeviceCurve a, DeviceCurve b) {
        int from = Math.max(a.firstStep(), b.firstStep());
        int to = Math.min(a.lastStep(), b.lastStep());
        return from < to
                ? Optional.of(new CurrentRange(DeviceCurve.currentOfStep(from), DeviceCurve.currentOfStep(to)))
                : Optional.empty();
    }

    /** Distance in V, at most so much where it does not exceed its uncertainty; nothing where fewer than two currents are common. */
    public static Optional<Measured> of(DeviceCurve a, DeviceCurve b) {
        return of(a, b, 0);
    }

    /** The same with all voltages of the first less those of the second raised by a shift, V. */
    public static Optional<Measured> of(DeviceCurve a, DeviceCurve b, double shift) {
        int from = Math.max(a.firstStep(), b.firstStep());
        int to = Math.min(a.lastStep(), b.lastStep());
        return from < to
                ? Optional.of(rms(IntStream.rangeClosed(from, to)
                        .mapToDouble(k -> a.voltageAtStep(k) - b.voltageAtStep(k) + shift)
                        .toArray()))
                : Optional.empty();
    }

    private static Measured rms(double... differences) {
        int n = differences.length;
        double square = 0;
        double steps = 0;
        for (int i = 0; i < n; i++) {
            square += differences[i] * differences[i] / n;
            double step = i == 0 ? 0 : differences[i] - differences[i - 1];
            steps += step * step / (2 * (n - 1));
        }
        double noise = Math.sqrt(steps);
        if (square <= 2 * steps) {
            return Measured.withNoise(Math.sqrt(square), Unit.VOLT, noise).asUpperBound();
        }
        double rms = Math.sqrt(square - steps);
        return Measured.withNoise(rms, Unit.VOLT, noise / Math.sqrt(n)).orUpperBound();
    }
}
