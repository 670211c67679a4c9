package clipwitness.measure.match;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.junction.CurrentRange;
import clipwitness.measure.junction.CurveDistance;
import clipwitness.measure.junction.Temperature;
import clipwitness.measure.junction.TemperatureSlope;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Optional;

/** How well two devices match. */
public final class Mismatch {
    private Mismatch() {}

    /**
     * The pair of two devices; nothing where one shows no junction, or both share less than a decade of current above their floors. Traces
     * taken at unlike temperatures are referred to one, with the uncertainty of the slope of the voltage over temperature.
     */
    public static Optional<MatchedPair> of(NamedDevice a, NamedDevice b) {
        Optional<CurrentRange> range = range(a, b).filter(CurrentRange::spansADecade);
        if (range.isEmpty()) {
            return Optional.empty();
        }
        Temperature ofA = a.result().temperature();
        Temperature ofB = b.result().temperature();
        double shift = TemperatureSlope.shift(ofA, ofB);
        double left = TemperatureSlope.ofTheSlope(ofA, ofB);
        Measured rms = CurveDistance.of(
                        a.result().curve().orElseThrow(), b.result().curve().orElseThrow(), shift)
                .orElseThrow();
        return Optional.of(new MatchedPair(
                List.of(a.name(), b.name()),
                rms.asValue()
                        .map(v -> orBound(v.plus(Source.TEMPERATURE, left)))
                        .orElse(rms),
                atOneMilliampere(a, b, shift, left),
                Math.abs(ofA.celsius() - ofB.celsius()),
                range.get()));
    }

    /** Why two devices, both junctions, are no pair; empty where they are one. */
    public static Optional<String> refusal(NamedDevice a, NamedDevice b) {
        boolean junctions = a.result().fit().isPresent() && b.result().fit().isPresent();
        return junctions && range(a, b).filter(CurrentRange::spansADecade).isEmpty()
                ? Optional.of("their curves share less than a decade of current above the floors of the traces")
                : Optional.empty();
    }

    private static Measured orBound(Measured.Value value) {
        return value.isUpperBound() ? value : value.orUpperBound();
    }

    private static Optional<CurrentRange> range(NamedDevice a, NamedDevice b) {
        return a.result().fit().isEmpty() || b.result().fit().isEmpty()
                ? Optional.empty()
                : a.result().curve().flatMap(x -> b.result().curve().flatMap(y -> CurveDistance.common(x, y)));
    }

    private static Measured atOneMilliampere(NamedDevice a, NamedDevice b, double shift, double left) {
        Measured x = a.result().atOneMilliampere();
        Measured y = b.result().atOneMilliampere();
        if (x.asValue().isEmpty() || y.asValue().isEmpty()) {
            return Measured.refused(Unit.VOLT, x.reason().or(y::reason).orElseThrow());
        }
        Measured.Value p = x.asValue().get();
        Measured.Value q = y.asValue().get();
        return Measured.withNoise(
                        Math.abs(p.number() - q.number() + shift),
                        Unit.VOLT,
                        Math.hypot(p.standardUncertainty(), q.standardUncertainty()))
                .plus(Source.TEMPERATURE, left)
                .orUpperBound();
    }
}
