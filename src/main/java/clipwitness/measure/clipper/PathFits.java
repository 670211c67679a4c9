package clipwitness.measure.clipper;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import clipwitness.reason.DeviceReason;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A fit of two paths, and the same to a curve that is resolved less sharply, with other resistances, with all junctions' voltages higher and with those of one leg higher, each by its
 * standard uncertainty: how far a figure moves is what that puts on it.
 */
public final class PathFits {
    /** Resistances as their colour code says: 5 % is the common tolerance, a bound (u = a / sqrt 3). */
    static final double RESISTANCE = 0.05 / Math.sqrt(3);

    /** Bins over which jitter and the scope's bandwidth may spread the steep part of a curve. */
    private static final double BLUR = 2;

    private static final double SHARE_KNOWN_TO = 1.0 / 3;

    private final PathFit base;
    private final Map<Source, PathFit> changed = new EnumMap<>(Source.class);

    /**
     * The fits.
     *
     * @param circuit   circuit of the clipped path
     * @param wave      the captured wave
     * @param junctions standard uncertainties of the junctions' voltages
     */
    public PathFits(ClipperCircuit circuit, PathFit.Wave wave, JunctionUncertainty junctions) {
        ClippingPair pair = circuit.pair();
        base = PathFit.withCleanPath(circuit, wave);
        changed.put(Source.STIMULUS, PathFit.withCleanPath(circuit.withResistances(1 + RESISTANCE), wave));
        changed.put(Source.METHOD, PathFit.withCleanPath(circuit, wave, BLUR));
        changed.put(
                Source.TEMPERATURE, PathFit.withCleanPath(circuit.with(pair.scaled(1 + junctions.together())), wave));
        changed.put(Source.NOISE, PathFit.withCleanPath(circuit.with(pair.unbalanced(1 + junctions.ofOneLeg())), wave));
    }

    /** The fit to the circuit as it is. */
    PathFit base() {
        return base;
    }

    /** The fits to the changed circuits, by what was changed. */
    Map<Source, PathFit> changed() {
        return changed;
    }

    /** G, the gain between input and clipper, a ratio. */
    public Measured gain() {
        return figure(PathFit::gain);
    }

    /** a, the captured output over the clipped part, a ratio. */
    public Measured clipped() {
        return figure(PathFit::clipped);
    }

    /** b, the captured output of the clean path over the input, a ratio. */
    public Measured clean() {
        return figure(PathFit::clean);
    }

    /**
     * The share of the output's fundamental that comes by the clean path, a ratio; refused where it is not known to a third, or where a straight
     * line explains the wave nearly as well, so that nothing shows the clipped path.
     */
    public Measured cleanShare() {
        Measured.Value share = figure(PathFit::cleanShare);
        return 2 * share.standardUncertainty() <= SHARE_KNOWN_TO && base.isBent()
                ? share
                : Measured.refused(Unit.ONE, DeviceReason.PATHS_ALIKE);
    }

    /** What the best of the fits leaves, root mean square over the noise of one value: no uncertainty of the devices explains it. */
    public double remainderOverNoise() {
        return Stream.concat(Stream.of(base), changed.values().stream())
                .mapToDouble(PathFit::remainderOverNoise)
                .min()
                .orElseThrow();
    }

    /** The pair's steeper slope at the ends of the wave over its slope at the centre, a ratio. */
    public double slopeAtEnds() {
        return base.slopeAtEnds();
    }

    private Measured.Value figure(Function<PathFit, Measured.Value> of) {
        Measured.Value value = of.apply(base);
        for (Map.Entry<Source, PathFit> e : changed.entrySet()) {
            value = value.plus(
                    e.getKey(),
                    Math.abs(of.apply(e.getValue()).number() - of.apply(base).number()));
        }
        return value;
    }
}
