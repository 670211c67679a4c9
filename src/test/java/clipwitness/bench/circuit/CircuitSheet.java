package clipwitness.bench.circuit;

import java.util.Locale;
import java.util.stream.Collectors;

/** The job sheet of a circuit. */
final class CircuitSheet {
    private CircuitSheet() {}

    static String of(CircuitJob job) {
        String states = job.states().stream()
                .map(s -> "  %s: {label: \"%s\", role: %s}\n".formatted(s.name(), label(s), s.role()))
                .collect(Collectors.joining());
        return """
                report: {number: SC-%s, title: "An invented circuit: %s", date: 2026-03-16}
                shop: {name: Software bench}
                customer: Invented
                unit: {name: Invented overdrive, serial: "0001", supply: 9 V}
                work: An invented circuit, captured in software.
                bench: {temperature: 23 °C, mains: %d Hz, knob-repeatability: 0.4 %%}
                stimulus: {shape: sine, frequency: %s Hz, level: 100 mV}
                states:
                %s%s""".formatted(
                        job.name(),
                        job.name(),
                        job.occasion().mains(),
                        String.format(Locale.ROOT, "%.0f", job.occasion().frequency()),
                        states,
                        clipper(job));
    }

    private static String label(Shown state) {
        return switch (state.role()) {
            case "before" -> "As received";
            case "unchanged" -> "After, original clippers";
            case "changed" -> "After, new clippers";
            default -> "Shown, " + state.name();
        };
    }

    private static String clipper(CircuitJob job) {
        if (!job.occasion().traced()) {
            return "";
        }
        Clipping clipping = job.states().get(0).pedal().clipping();
        String resistances = clipping.topology() == Topology.SHUNT
                ? "topology: shunt, source-resistance: %.0f Ω".formatted(clipping.resistance())
                : "topology: feedback, gain-control: input, input-resistance: %.0f Ω, feedback-resistance: %.0f Ω"
                        .formatted(clipping.resistance(), clipping.feedback());
        String pairs = job.states().stream()
                .filter(s -> !s.listed().isEmpty())
                .map(s -> s.name() + ": " + Device.inSheet(s.listed()))
                .collect(Collectors.joining(", "));
        String extra = job.extra().isEmpty() ? "" : job.extra() + ", ";
        return "clipper: {" + resistances + ", " + extra + "pairs: {" + pairs + "}}\n";
    }
}
