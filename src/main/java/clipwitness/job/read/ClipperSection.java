package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import clipwitness.job.Clipper;
import clipwitness.job.ClipperPair;
import clipwitness.job.Leg;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the section {@code clipper}. */
final class ClipperSection {
    /** Clippers have one to a few devices in a leg; a chain of so many would clip at tens of volts. */
    private static final int LONGEST_LEG = 100;

    private ClipperSection() {}

    /** The section, or nothing where its topology is missing or wrong. */
    static Optional<Clipper> read(Section section, List<String> states) {
        Optional<Clipper.Topology> topology = section.required("topology", "Write shunt or feedback")
                .flatMap(f -> f.choice(List.of(Clipper.Topology.values()), ClipperSection::code, "topology"));
        OptionalDouble source = resistance(section, "source-resistance", topology, Clipper.Topology.SHUNT);
        OptionalDouble input = resistance(section, "input-resistance", topology, Clipper.Topology.FEEDBACK);
        OptionalDouble feedback = resistance(section, "feedback-resistance", topology, Clipper.Topology.FEEDBACK);
        Clipper.GainControl control = gainControl(section, topology);
        OptionalDouble gain = section.field("output-gain")
                .map(f -> f.number(AllowedRange.OUTPUT_GAIN))
                .orElse(OptionalDouble.empty());
        Optional<String> unclipped = section.field("unclipped").flatMap(f -> f.oneOf(states, "state"));
        boolean cleanPath =
                section.field("clean-path").flatMap(ClipperSection::yesOrNo).orElse(false);
        Map<String, ClipperPair> pairs = section.section("pairs", s -> pairs(s, states));
        return topology.map(t -> new Clipper(t, source, input, feedback, control, gain, unclipped, cleanPath, pairs));
    }

    private static String code(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static Optional<Boolean> yesOrNo(Field field) {
        return field.choice(List.of(true, false), String::valueOf, "answer");
    }

    /** The gain control; a shunt clipper has no resistance that could be one. */
    private static Clipper.GainControl gainControl(Section section, Optional<Clipper.Topology> topology) {
        Clipper.GainControl control = section.field("gain-control")
                .flatMap(f -> f.choice(List.of(Clipper.GainControl.values()), ClipperSection::code, "gain control"))
                .orElse(Clipper.GainControl.SERIES);
        if (control != Clipper.GainControl.SERIES && topology.equals(Optional.of(Clipper.Topology.SHUNT))) {
            section.fault(
                    ErrorCode.BAD_VALUE,
                    "gain-control",
                    "a shunt clipper has no " + code(control) + "-resistance that could be the gain control",
                    "Remove the key, write gain-control: series, or write topology: feedback");
        }
        return control;
    }

    private static OptionalDouble resistance(
            Section section, String key, Optional<Clipper.Topology> topology, Clipper.Topology owner) {
        Optional<Field> field = section.field(key);
        if (topology.isPresent() && field.isPresent() != (topology.get() == owner)) {
            boolean missing = field.isEmpty();
            section.fault(
                    missing ? ErrorCode.MISSING_KEY : ErrorCode.UNKNOWN_KEY,
                    key,
                    missing
                            ? "a " + code(owner) + " clipper needs the key '" + key + "'"
                            : "a " + code(topology.get()) + " clipper has no " + key,
                    missing
                            ? "Write for example " + key + ": 1 kΩ"
                            : "Remove the key, or write topology: " + code(owner));
        }
        return field.map(f -> f.number(AllowedRange.RESISTANCE)).orElse(OptionalDouble.empty());
    }

    private static Map<String, ClipperPair> pairs(Section section, List<String> states) {
        Map<String, ClipperPair> pairs = new LinkedHashMap<>();
        section.values(states).forEach((state, node) -> pair(node).ifPresent(pair -> pairs.put(state, pair)));
        return pairs;
    }

    private static Optional<ClipperPair> pair(SheetNode node) {
        if (!(node.node() instanceof YamlNode.Items legs) || legs.items().size() != 2) {
            node.fault(
                    "a pair has two legs",
                    "Write [leg that conducts on positive node voltage, the other], for example [D1, [D2, D3]] or [D1, null]");
            return Optional.empty();
        }
        List<SheetNode> items = node.items();
        return Optional.of(new ClipperPair(leg(items.get(0)), leg(items.get(1))));
    }

    private static Leg leg(SheetNode node) {
        if (node.node().isNull()) {
            return new Leg(List.of());
        }
        List<String> devices = node.texts().stream().map(Field::text).toList();
        if (devices.size() > LONGEST_LEG) {
            node.fault(
                    "a leg has at most " + LONGEST_LEG + " devices in series, but this one has " + devices.size(),
                    "Name the devices of one leg only");
        }
        return new Leg(devices.stream().limit(LONGEST_LEG).toList());
    }
}
