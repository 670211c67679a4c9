package clipwitness.compare.device;

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
import clipwitness.measure.junction.Temperature;
import clipwitness.measure.junction.TemperatureSlope;
import clipwitness.measure.match.NamedDevice;
import clipwitness.reason.Argument;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.FrameReason;
import clipwitness.reason.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** A state's clipper made of its traced devices. */
final class ClipperOfState {
    /** How far two legs of one unit may differ in temperature, K. */
    private static final double BETWEEN_LEGS = 0.3;

    private final ClipperPair pair;
    private final Map<String, NamedDevice> devices;
    private final Optional<Reason> missing;
    private final Optional<ClippingPair> legs;
    private final Map<Temperature, ClippingPair> inUnitAt = new ConcurrentHashMap<>();

    ClipperOfState(ClipperPair pair, Map<String, NamedDevice> devices) {
        this.pair = pair;
        this.devices = devices;
        this.missing = names().flatMap(n -> missing(n).stream()).findFirst();
        this.legs = missing.isPresent()
                ? Optional.empty()
                : Optional.of(new ClippingPair(leg(pair.up(), l -> 0), leg(pair.down(), l -> 0)));
    }

    private Stream<String> names() {
        return Stream.concat(pair.up().devices().stream(), pair.down().devices().stream());
    }

    /** Why nothing can be predicted: a device without curve, or whose curve is no junction's. */
    Optional<Reason> missing() {
        return missing;
    }

    private Optional<Reason> missing(String name) {
        if (!devices.containsKey(name)) {
            return Optional.of(Reason.of(DeviceReason.NOT_TRACED, Argument.name(name)));
        }
        return devices.get(name)
                .result()
                .refusal()
                .map(r -> Reason.of(FrameReason.IN_CURVE, Argument.name(name), Argument.inner(r)));
    }

    /**
     * The circuit, its devices referred from the temperatures of their traces to that in the unit.
     *
     * @param inUnit temperature of the capture that is predicted
     */
    ClipperCircuit circuit(Clipper clipper, boolean inverting, Temperature inUnit) {
        ClippingPair referred = inUnitAt.computeIfAbsent(inUnit, this::referred);
        return switch (clipper.topology()) {
            case SHUNT ->
                new ClipperCircuit.Shunt(referred, clipper.sourceResistance().orElseThrow());
            case FEEDBACK ->
                new ClipperCircuit.Feedback(
                        referred,
                        clipper.inputResistance().orElseThrow(),
                        clipper.feedbackResistance().orElseThrow(),
                        inverting);
        };
    }

    private ClippingPair referred(Temperature inUnit) {
        return new ClippingPair(
                leg(pair.up(), t -> TemperatureSlope.shift(t, inUnit)),
                leg(pair.down(), t -> TemperatureSlope.shift(t, inUnit)));
    }

    /** The legs side by side, where none of their devices is missing. */
    ClippingPair pair() {
        return legs.orElseThrow();
    }

    private ClipperLeg leg(Leg leg, ToDoubleFunction<Temperature> shift) {
        List<DeviceLaw> laws = new ArrayList<>();
        for (String name : leg.devices()) {
            JunctionResult traced = devices.get(name).result();
            double volts = shift.applyAsDouble(traced.temperature());
            DeviceLaw.of(traced).ifPresent(law -> laws.add(volts == 0 ? law : law.shifted(volts)));
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
                        together, TemperatureSlope.uncertainty(result.temperature(), inUnit) / volts.getAsDouble());
                ofOneLeg = Math.max(
                        ofOneLeg, Math.hypot(noise, Temperature.VOLTS_PER_KELVIN * BETWEEN_LEGS) / volts.getAsDouble());
            }
        }
        return new JunctionUncertainty(together, ofOneLeg);
    }
}
