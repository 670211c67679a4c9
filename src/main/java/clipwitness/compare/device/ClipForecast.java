package clipwitness.compare.device;

import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.TracedDevice;
import clipwitness.job.Clipper;
import clipwitness.job.ClipperPair;
import clipwitness.job.Job;
import clipwitness.job.Leg;
import clipwitness.job.Role;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.clipper.ClipperCircuit;
import clipwitness.measure.clipper.JunctionUncertainty;
import clipwitness.measure.junction.Temperature;
import clipwitness.measure.match.MatchedPair;
import clipwitness.measure.match.NamedDevice;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a pair would clip at in a job's clipper, against the original pair: both at the source voltage that drives 1 mA through the
 * resistance ahead of the pair (Rs or Rg) into 0 V. Of a feedback clipper the voltage across the pair counts.
 */
public final class ClipForecast {
    private static final double PAIR_CURRENT = 1e-3;

    private final Clipper clipper;
    private final ClipperPair original;
    private final Map<String, NamedDevice> traced;
    private final Levels before;

    private ClipForecast(Clipper clipper, ClipperPair original, Map<String, NamedDevice> traced) {
        this.clipper = clipper;
        this.original = original;
        this.traced = traced;
        this.before = levels(new ClipperOfState(original, traced));
    }

    /**
     * Clip levels to both sides, V.
     *
     * @param up        where the upper leg conducts
     * @param down      where the other does
     * @param upRaised  up with all voltages of the upper leg higher by their uncertainty
     * @param together  relative standard uncertainty of both, from temperature
     */
    private record Levels(double up, double down, double upRaised, double together) {
        double mean() {
            return (up + down) / 2;
        }

        double asymmetry() {
            return asymmetry(up);
        }

        private double asymmetry(double upper) {
            return 100 * (upper - down) / (upper + down);
        }

        /** Both legs are known equally well, each by itself. */
        double ofMean() {
            return Math.sqrt(2) * Math.abs(upRaised - up) / 2 / mean();
        }

        double ofAsymmetry() {
            return Math.sqrt(2) * Math.abs(asymmetry(upRaised) - asymmetry());
        }
    }

    /**
     * A pair's forecast, without the uncertainty of the sheet's resistances, which the pair before shares.
     *
     * @param levelChange mean of its clip levels over the original pair's, dB
     * @param asymmetry   difference of its clip levels over their sum, percent
     */
    public record Forecast(Measured.Value levelChange, Measured.Value asymmetry) {}

    /**
     * The forecast for a job's clipper; nothing where the sheet names none, or the pair before was not traced.
     *
     * @param job      job
     * @param captures its traced devices, other captures too if you like
     */
    public static Optional<ClipForecast> of(Job job, List<CaptureResult> captures) {
        Map<String, NamedDevice> devices = TracedDevice.byName(TracedDevice.among(captures));
        return job.sheet()
                .clipper()
                .flatMap(clipper -> before(job, clipper)
                        .filter(pair -> !pair.up().devices().isEmpty()
                                && !pair.down().devices().isEmpty()
                                && new ClipperOfState(pair, devices).missing().isEmpty())
                        .map(pair -> new ClipForecast(clipper, pair, devices)));
    }

    private static Optional<ClipperPair> before(Job job, Clipper clipper) {
        return job.sheet().states(Role.BEFORE).stream()
                .flatMap(s -> Optional.ofNullable(clipper.pairs().get(s.name())).stream())
                .findFirst();
    }

    /** Names of the devices of the pair before. */
    public List<String> original() {
        return names().toList();
    }

    private Stream<String> names() {
        return Stream.concat(original.up().devices().stream(), original.down().devices().stream());
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
        Map<String, NamedDevice> byName = new HashMap<>();
        devices.forEach(d -> byName.put(d.name(), d));
        Levels levels = levels(new ClipperOfState(legs, byName));
        return new Forecast(
                Measured.of(
                        Decibels.ofAmplitude(levels.mean() / before.mean()),
                        Unit.DECIBEL,
                        new Contribution(Source.TEMPERATURE, Decibels.PER_RELATIVE_AMPLITUDE * levels.together),
                        new Contribution(
                                Source.NOISE,
                                Decibels.PER_RELATIVE_AMPLITUDE * Math.hypot(levels.ofMean(), before.ofMean()))),
                Measured.withNoise(levels.asymmetry(), Unit.PERCENT, levels.ofAsymmetry()));
    }

    private Levels levels(ClipperOfState legs) {
        JunctionUncertainty uncertainty = legs.uncertainty(temperature());
        ClipperCircuit circuit = legs.circuit(clipper, true, temperature());
        ClipperCircuit raised = circuit.with(circuit.pair().unbalanced(1 + uncertainty.ofOneLeg()));
        return new Levels(level(circuit, 1), level(circuit, -1), level(raised, 1), uncertainty.together());
    }

    private Temperature temperature() {
        return names().map(n -> traced.get(n).result().temperature())
                .findFirst()
                .orElseThrow();
    }

    private double level(ClipperCircuit circuit, int sign) {
        return Math.abs(circuit.outputAt(sign * source()));
    }

    /** Voltage of the source at which clip levels are forecast, V. */
    public double source() {
        return PAIR_CURRENT
                * clipper.sourceResistance()
                        .orElseGet(() -> clipper.inputResistance().orElseThrow());
    }
}
