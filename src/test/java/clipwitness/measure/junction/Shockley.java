package clipwitness.measure.junction;

import clipwitness.capture.IvCurve;
import clipwitness.capture.Samples;
import clipwitness.fixture.Curves;
import clipwitness.signal.ReferenceRow;
import java.util.List;
import java.util.stream.Stream;

/** The reference junctions: parameters, exact curves, exact forward voltages. */
final class Shockley {
    private Shockley() {}

    private static Stream<ReferenceRow> rows(String file) {
        return ReferenceRow.of(Shockley.class, "/clipwitness/bench/shockley-" + file + ".csv");
    }

    static Stream<ReferenceRow> parameters() {
        return rows("params");
    }

    private static Stream<ReferenceRow> rows(String file, ReferenceRow device) {
        return rows(file)
                .filter(r -> r.text("device").equals(device.text("device"))
                        && r.number("temperature") == device.number("temperature"));
    }

    static IvCurve curve(ReferenceRow device) {
        List<ReferenceRow> points = rows("curves", device).toList();
        return Curves.of(column(points, "voltage"), column(points, "current"));
    }

    private static Samples column(List<ReferenceRow> points, String name) {
        return Samples.of(points.stream().mapToDouble(p -> p.number(name)).toArray());
    }

    static List<ReferenceRow> forwardVoltages(ReferenceRow device) {
        return rows("forward-voltages", device).toList();
    }

    /** The device's model. */
    static JunctionModel model(ReferenceRow device) {
        String shunt = device.text("shunt Rp");
        return new JunctionModel(
                device.number("Is"),
                device.number("n") * device.number("thermal voltage"),
                device.number("Rs"),
                shunt.isEmpty() ? 0 : 1 / Double.parseDouble(shunt));
    }

    static Temperature temperature(ReferenceRow device) {
        return new Temperature(device.number("temperature"), 0);
    }
}
