package clipwitness.bench;

import clipwitness.signal.ReferenceRow;

/** The shunt clippers of diode-clipper-cases.csv. */
final class ClipperCase {
    private ClipperCase() {}

    /** The clipper of a case. */
    static ShuntClipper named(String name) {
        ReferenceRow row = ReferenceRow.of(ClipperCase.class, "diode-clipper-cases.csv")
                .filter(r -> r.text("case").equals(name))
                .findFirst()
                .orElseThrow();
        return new ShuntClipper(row.number("R"), new LegPair(leg(row, "upper"), leg(row, "lower")));
    }

    private static ClipperLeg leg(ReferenceRow row, String side) {
        if (row.text(side + " Is").isEmpty()) {
            return ClipperLeg.open();
        }
        return ClipperLeg.of(new Junction(
                row.number(side + " Is"),
                row.number(side + " n"),
                row.number(side + " Rs"),
                row.number("temperature")));
    }
}
