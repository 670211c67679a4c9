package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import clipwitness.job.Rail;
import clipwitness.job.RailReading;
import clipwitness.quantity.QuantityFormatException;
import clipwitness.quantity.QuantityParser;
import clipwitness.quantity.Unit;
import clipwitness.quantity.WrittenQuantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the lists {@code rails} and {@code readings}: two names for one list, joined where both are there. */
final class RailsSection {
    /** Sizes that no meter shows, in any unit. */
    private static final double LEAST = 1e-15;

    private static final double MOST = 1e12;

    private RailsSection() {}

    static List<Rail> read(Section sheet, List<String> states) {
        List<SheetNode> nodes = new ArrayList<>(sheet.items("rails"));
        nodes.addAll(sheet.items("readings"));
        List<Rail> rails = new ArrayList<>();
        for (SheetNode node : nodes) {
            Rail rail = Section.read(node, section -> rail(section, states));
            if (rails.stream()
                    .anyMatch(r -> r.name().equals(rail.name()) && !rail.name().isEmpty())) {
                node.fault(
                        ErrorCode.TWICE,
                        "a second rail is called " + NameWords.quoted(rail.name()),
                        "Put all its readings into one entry");
            }
            rails.add(rail);
        }
        return rails;
    }

    private static Rail rail(Section section, List<String> states) {
        String name = section.required("name", "Write for example name: positive rail")
                .map(Field::text)
                .orElse("");
        Optional<WrittenQuantity> expected = section.field("expected").flatMap(RailsSection::quantity);
        OptionalDouble tolerance = section.field("tolerance")
                .map(f -> f.ratio(AllowedRange.above(0, Unit.PERCENT).to(100)))
                .orElse(OptionalDouble.empty());
        List<WrittenQuantity> inOneUnit = new ArrayList<>(expected.stream().toList());
        Map<String, RailReading> readings = new LinkedHashMap<>();
        section.values(states)
                .forEach((state, node) -> node.text()
                        .flatMap(field -> reading(field, inOneUnit))
                        .ifPresent(reading -> readings.put(state, reading)));
        return new Rail(name, expected.map(WrittenQuantity::quantity), tolerance, readings);
    }

    private static Optional<RailReading> reading(Field field, List<WrittenQuantity> inOneUnit) {
        Optional<WrittenQuantity> reading = quantity(field);
        reading.ifPresent(inOneUnit::add);
        if (reading.isPresent() && reading.get().unit() != inOneUnit.get(0).unit()) {
            field.fault(
                    field.quoted() + " is not in the unit of this rail"
                            + (inOneUnit.get(0).unit() == Unit.ONE
                                    ? ", whose first value has none"
                                    : ", " + inOneUnit.get(0).unit().symbol()),
                    "Write expectation and readings of a rail in one unit");
        }
        return reading.map(r -> new RailReading(r.quantity(), r.digit().doubleValue()));
    }

    private static Optional<WrittenQuantity> quantity(Field field) {
        try {
            WrittenQuantity written = QuantityParser.inAnyUnit(field.text());
            double size = Math.abs(written.quantity().value());
            if (size == 0 || (size >= LEAST && size <= MOST)) {
                return Optional.of(written);
            }
            field.fault(
                    field.quoted() + " is out of range",
                    "Write what the meter showed, with its unit, for example 16.1 V");
            return Optional.empty();
        } catch (QuantityFormatException e) {
            field.fault(e.what(), e.remedy());
            return Optional.empty();
        }
    }
}
