package clipwitness.bench.circuit;

import clipwitness.bench.ClipperLeg;
import clipwitness.bench.Junction;
import clipwitness.bench.LegPair;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Junctions by the names that job sheets give them, and legs written with these names: {@code D1|D2+D3} is one against two in series. */
final class Device {
    private static final double BENCH_CELSIUS = 23;

    /** D silicon, Q transistor junctions, G germanium, L lamps. */
    private static final Map<String, Junction> BY_NAME = Map.of(
            "D1", new Junction(2.5e-9, 1.75, 0.6, BENCH_CELSIUS),
            "D2", new Junction(2.7e-9, 1.76, 0.6, BENCH_CELSIUS),
            "D3", new Junction(2.3e-9, 1.74, 0.7, BENCH_CELSIUS),
            "D4", new Junction(3.1e-9, 1.78, 0.5, BENCH_CELSIUS),
            "Q1", new Junction(2e-14, 1.01, 1.5, BENCH_CELSIUS),
            "Q2", new Junction(2.1e-14, 1.01, 1.4, BENCH_CELSIUS),
            "G1", new Junction(3e-7, 1.3, 6, BENCH_CELSIUS),
            "G2", new Junction(3.3e-7, 1.31, 7, BENCH_CELSIUS),
            "L1", new Junction(1e-17, 1.9, 3, BENCH_CELSIUS),
            "L2", new Junction(1.1e-17, 1.9, 3, BENCH_CELSIUS));

    private Device() {}

    /** The junction of a name. */
    static Junction named(String name) {
        return BY_NAME.get(name);
    }

    /** A pair from its description; nothing on one side of the bar is an open leg, {@code ~47k} behind a leg a joint of 47 kΩ. */
    static LegPair pair(String description) {
        String[] sides = description.split("\\|", -1);
        return new LegPair(leg(sides[0]), leg(sides[1]));
    }

    /** The names on one side of a description, as a job sheet lists them. */
    static String inSheet(String description) {
        String[] sides = description.split("\\|", -1);
        return "[" + listed(sides[0]) + ", " + listed(sides[1]) + "]";
    }

    /** All names in a description. */
    static Stream<String> names(String description) {
        return Arrays.stream(description.split("[|+]", -1)).filter(BY_NAME::containsKey);
    }

    private static String listed(String side) {
        return side.isEmpty() ? "null" : side.contains("+") ? "[" + side.replace("+", ", ") + "]" : side;
    }

    private static ClipperLeg leg(String side) {
        String[] parts = side.split("~", -1);
        List<Junction> junctions = Arrays.stream(parts[0].split("\\+", -1))
                .filter(BY_NAME::containsKey)
                .map(BY_NAME::get)
                .toList();
        ClipperLeg leg = ClipperLeg.of(junctions.toArray(Junction[]::new));
        return parts.length == 1 ? leg : leg.withJoint(1e3 * Double.parseDouble(parts[1].replace("k", "")));
    }
}
