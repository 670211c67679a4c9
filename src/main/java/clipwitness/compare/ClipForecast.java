package clipwitness.compare;

import clipwitness.job.Clipper;
import clipwitness.job.ClipperPair;
import clipwitness.job.Job;
import clipwitness.job.Leg;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.measure.clipper.ClipperCircuit;
import clipwitness.measure.junction.MatchedPair;
import clipwitness.measure.junction.NamedDevice;
import clipwitness.quantity.Decibels;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a pair would clip at in a job's clipper, against the original pair: both at the source voltage that drives 1 mA through the
 * resistance ahead of the pair (Rs or Rg) into 0 V. Of a feedback clipper the voltage across the pair counts.
 */
public final class ClipForecast {
    private static final double PAIR_CURRENT = 1e-3;

    private final Clipper clipper;
    private final Levels original;
    private final double source;

    private ClipForecast(Clipper clipper, Levels original, double source) {
        this.clipper = clipper;
        this.original = original;
        this.source = source;
    }

    /** Clip levels to both sides, V. */
    private record Levels(double up, double down) {
        double mean() {
            return (up + down) / 2;
        }
    }

    /**
     * A pair's forecast.
     *
     * @param levelChange mean of its clip levels over the original pair's, dB
     * @param asymmetry   difference of its clip levels over their sum, percent
     */
    public record Forecast(double levelChange, double asymmetry) {}

    /**
     * The forecast for a job's clipper; nothing where the sheet names none, or the pair before was not traced.
     *
     * @param job    job
     * @param traced its traced devices
     */
    public static Optional<ClipForecast> of(Job job, List<NamedDevice> traced) {
        Map<String, NamedDevice> devices = byName(traced);
        return job.sheet()
                .clipper()
                .flatMap(clipper -> before(job, clipper)
                        .map(pair -> new ClipperOfState(pair, devices))
                        .filter(legs -> legs.missing().isEmpty())
                        .map(legs -> of(clipper, legs)));
    }

    private static Optional<ClipperPair> before(Job job, Clipper clipper) {
        return job.sheet().states().stream()
                .filter(s -> s.role() == Role.BEFORE)
                .map(State::name)
                .flatMap(s -> Optional.ofNullable(clipper.pairs().get(s)).stream())
                .findFirst();
    }

    private static ClipForecast of(Clipper clipper, ClipperOfState legs) {
        double resistance = clipper.sourceResistance()
                .orElseGet(() -> clipper.inputResistance().orElseThrow());
        double source = resistance * PAIR_CURRENT;
        return new ClipForecast(clipper, levels(legs.circuit(clipper, true), source), source);
    }

    private static Levels levels(ClipperCircuit circuit, double source) {
        return new Levels(Math.abs(circuit.outputAt(source)), Math.abs(circuit.outputAt(-source)));
    }

    private static Map<String, NamedDevice> byName(List<NamedDevice> devices) {
        Map<String, NamedDevice> byName = new HashMap<>();
        devices.forEach(d -> byName.putIfAbsent(d.name(), d));
        return byName;
    }

    /**
     * What a pair would clip at.
     *
     * @param pair    pair, both devices junctions
     * @param devices the devices, by name
     */
    public Forecast of(MatchedPair pair, List<NamedDevice> devices) {
        ClipperPair legs = new ClipperPair(
                new Leg(List.of(pair.devices().get(0))),
                new Leg(List.of(pair.devices().get(1))));
        Levels levels = levels(new ClipperOfState(legs, byName(devices)).circuit(clipper, true), source);
        return new Forecast(
                Decibels.ofAmplitude(levels.mean() / original.mean()),
                100 * (levels.up() - levels.down()) / (levels.up() + levels.down()));
    }
}
