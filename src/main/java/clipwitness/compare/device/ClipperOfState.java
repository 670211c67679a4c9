package clipwitness.compare.device;

import clipwitness.compare.judge.CaptureTemperature;
import clipwitness.job.Clipper;
import clipwitness.job.ClipperPair;
import clipwitness.job.Leg;
import clipwitness.measure.Measured;
import clipwitness.measure.clipper.ClipperCircuit;
import clipwitness.measure.clipper.ClipperLeg;
import clipwitness.measure.clipper.ClippingPair;
import clipwitness.measure.clipper.DeviceLaw;
import clipwitness.measure.clipper.JunctionUncertainty;
import clipwitness.measure.junction.JunctionFit;
import clipwitness.measure.junction.JunctionResult;
import clipwitness.measure.junction.NamedDevice;
import clipwitness.measure.junction.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** A state's clipper made of its traced devices. */
final class ClipperOfState {
    /** Silicon and germanium junctions lose about 2 mV/K: common practice. */
    private static final double VOLTS_PER_KELVIN = 2e-3;

    /** How far two legs of one unit may differ in temperature, K. */
    private static final double BETWEEN_LEGS = 0.3;

    private final ClipperPair pair;
    private final Map<String, NamedDevice> devices;
    private final Optional<String> missing;
    private final Optional<ClippingPair> legs;

    ClipperOfState(ClipperPair pair, Map<String, NamedDevice> devices) {
        this.pair = pair;
        this.devices = devices;
        this.missing = names().flatMap(n -> missing(n).stream()).findFirst();
        this.legs = missing.isPresent()
                ? Optional.empty()
                : Optional.of(new ClippingPair(leg(pair.up()), leg(pair.down())));
    }

    private Stream<String> names() {
        return Stream.concat(pair.up().devices().stream(), pair.down().devices().stream());
    }

    /** Why nothing can be predicted: a device without curve, or whose curve is no junction's. */
    Optional<String> missing() {
        return missing;
    }

    private Optional<String> missing(String name) {
        if (!devices.containsKey(name)) {
            return Optional.of(name + " was not traced");
        }
        String refusal = devices.get(name).result().refusal();
        return refusal.isEmpty() ? Optional.empty() : Optional.of("curve of " + name + ": " + refusal);
    }

    /** The circuit. */
    ClipperCircuit circuit(Clipper clipper, boolean inverting) {
        return switch (clipper.topology()) {
            case SHUNT ->
                new ClipperCircuit.Shunt(pair(), clipper.sourceResistance().orElseThrow());
            case FEEDBACK ->
                new ClipperCircuit.Feedback(
                        pair(),
                        clipper.inputResistance().orElseThrow(),
                        clipper.feedbackResistance().orElseThrow(),
                        inverting);
        };
    }

    /** The legs side by side, where none of their devices is missing. */
    ClippingPair pair() {
        return legs.orElseThrow();
    }

    private ClipperLeg leg(Leg leg) {
        List<DeviceLaw> laws = new ArrayList<>();
        for (String name : leg.devices()) {
            DeviceLaw.of(devices.get(name).result()).ifPresent(laws::add);
        }
        return new ClipperLeg(laws);
    }

    /**
     * How well the junctions' voltages are known: from the temperature in the unit against the traces', and from the traces.
     *
     * @param inUnit temperature of the capture that is predicted
     */
    JunctionUncertainty uncertainty(Temperature inUnit) {
        double together = 0;
        double ofOneLeg = 0;
        for (String name : names().toList()) {
            JunctionResult result = devices.get(name).result();
            OptionalDouble volts = result.forwardVoltages().stream()
                    .flatMap(f -> f.voltage().asValue().stream())
                    .mapToDouble(Measured.Value::number)
                    .max();
            if (volts.isPresent()) {
                double noise = result.fit().map(JunctionFit::scatter).orElse(0.0);
                together = Math.max(
                        together,
                        VOLTS_PER_KELVIN
                                * CaptureTemperature.apart(inUnit, result.temperature())
                                / volts.getAsDouble());
                ofOneLeg = Math.max(ofOneLeg, Math.hypot(noise, VOLTS_PER_KELVIN * BETWEEN_LEGS) / volts.getAsDouble());
            }
        }
        return new JunctionUncertainty(together, ofOneLeg);
    }
}
