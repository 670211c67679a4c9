package clipwitness.measure.clipper;

import clipwitness.measure.junction.JunctionModel;
import clipwitness.signal.ReferenceRow;
import java.util.List;

/** The reference clippers of diode-clipper-cases.csv, their legs as models. */
final class ReferenceClipper {
    private ReferenceClipper() {}

    static ClipperCircuit.Shunt named(String name) {
        ReferenceRow row = ReferenceRow.of(ReferenceClipper.class, "/clipwitness/bench/diode-clipper-cases.csv")
                .filter(r -> r.text("case").equals(name))
                .findFirst()
                .orElseThrow();
        return new ClipperCircuit.Shunt(new ClippingPair(leg(row, "upper"), leg(row, "lower")), row.number("R"));
    }

    private static ClipperLeg leg(ReferenceRow row, String side) {
        if (row.text(side + " Is").isEmpty()) {
            return new ClipperLeg(List.of());
        }
        JunctionModel model = new JunctionModel(
                row.number(side + " Is"),
                row.number(side + " n") * row.number("thermal voltage"),
                row.number(side + " Rs"),
                0);
        return new ClipperLeg(List.of(DeviceLaw.of(model)));
    }
}
