package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import clipwitness.job.Bench;
import clipwitness.job.Instrument;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Reads the section {@code bench}. */
final class BenchSection {
    /** Temperatures at which a bench can be worked at, with room for a heated or cooled unit. */
    static final AllowedRange TEMPERATURE =
            AllowedRange.from(Bench.LOWEST_TEMPERATURE, Unit.CELSIUS).to(Bench.HIGHEST_TEMPERATURE);

    private static final AllowedRange SHARE = AllowedRange.from(0, Unit.PERCENT).to(100);

    private BenchSection() {}

    static Bench read(Section section) {
        return new Bench(
                number(section, "temperature", TEMPERATURE),
                number(section, "mains", AllowedRange.MAINS),
                number(section, "load", AllowedRange.RESISTANCE),
                number(section, "input-termination", AllowedRange.between(0, AllowedRange.RESISTANCE.most(), Unit.OHM)),
                section.node("instruments").map(BenchSection::instruments).orElse(List.of()),
                share(section, "vertical-accuracy").orElse(Bench.DEFAULT_VERTICAL_ACCURACY),
                share(section, "knob-repeatability").orElse(Bench.DEFAULT_KNOB_REPEATABILITY),
                share(section, "meter-accuracy").orElse(Bench.DEFAULT_METER_ACCURACY));
    }

    private static OptionalDouble number(Section section, String key, AllowedRange range) {
        return section.field(key).map(f -> f.number(range)).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble share(Section section, String key) {
        return section.field(key).map(f -> f.ratio(SHARE)).orElse(OptionalDouble.empty());
    }

    private static List<Instrument> instruments(SheetNode node) {
        boolean list = node.node() instanceof YamlNode.Items;
        List<Instrument> instruments = new ArrayList<>();
        for (SheetNode item : list ? node.items() : List.of(node)) {
            Instrument read = instrument(item);
            if (instruments.stream()
                    .anyMatch(i -> i.name().equals(read.name()) && !read.name().isEmpty())) {
                item.fault(
                        ErrorCode.TWICE,
                        "a second instrument is called " + NameWords.quoted(read.name()),
                        "Give it a name of its own");
            }
            instruments.add(read);
        }
        return instruments;
    }

    private static Instrument instrument(SheetNode node) {
        if (node.isText()) {
            String name = node.text().map(Field::text).orElse("");
            return new Instrument(name, "", "", Optional.empty(), OptionalInt.empty(), OptionalDouble.empty());
        }
        return Section.read(
                node,
                s -> new Instrument(
                        s.required("name", "Write for example name: scope")
                                .map(Field::text)
                                .orElse(""),
                        s.text("what"),
                        s.text("serial"),
                        s.field("calibrated").flatMap(Field::date),
                        s.field("bits").map(f -> f.whole(1, 64)).orElse(OptionalInt.empty()),
                        share(s, "vertical-accuracy")));
    }
}
