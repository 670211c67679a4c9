package clipwitness.measure.junction;

import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Optional;

/** How well two devices match. */
public final class Mismatch {
    private Mismatch() {}

    /** The pair of two devices; nothing where one shows no junction, or no current is common. */
    public static Optional<MatchedPair> of(NamedDevice a, NamedDevice b) {
        if (a.result().fit().isEmpty() || b.result().fit().isEmpty()) {
            return Optional.empty();
        }
        Optional<Measured> rms =
                a.result().curve().flatMap(x -> b.result().curve().flatMap(y -> CurveDistance.of(x, y)));
        double apart = Math.abs(
                a.result().temperature().celsius() - b.result().temperature().celsius());
        return rms.map(d -> new MatchedPair(List.of(a.name(), b.name()), d, atOneMilliampere(a, b), apart));
    }

    private static Measured atOneMilliampere(NamedDevice a, NamedDevice b) {
        Measured x = a.result().atOneMilliampere();
        Measured y = b.result().atOneMilliampere();
        if (x.asValue().isEmpty() || y.asValue().isEmpty()) {
            return Measured.refused(Unit.VOLT, x.reason().or(y::reason).orElseThrow());
        }
        Measured.Value p = x.asValue().get();
        Measured.Value q = y.asValue().get();
        return Measured.withNoise(
                        Math.abs(p.number() - q.number()),
                        Unit.VOLT,
                        Math.hypot(p.standardUncertainty(), q.standardUncertainty()))
                .orUpperBound();
    }
}
