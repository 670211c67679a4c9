package clipwitness.reading;

import clipwitness.capture.VerticalScale;
import clipwitness.quantity.Unit;
import clipwitness.reading.layout.Preamble;
import clipwitness.reading.layout.Statement;
import clipwitness.reading.number.ValueText;
import clipwitness.reading.number.WrittenUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Vertical scales that the preamble gives, in volts or amperes a division. */
final class VerticalFacts {
    private static final Pattern SCALE = Pattern.compile(
            ".*(?:vertical scale|volts? ?/ ?div|v ?/ ?div|volts? per div|vert scale|y scale|scale per div).*");
    private static final Pattern OFFSET = Pattern.compile(".*(?:vertical offset|vert offset|y offset).*");
    private static final String NUMBER = "[+-]?[\\d.,]+(?:[eE][+-]?\\d+)?";
    private static final Pattern A_DIVISION =
            Pattern.compile("(?<scale>" + NUMBER + ")\\s*(?<unit>[^\\d\\s/,;]{1,3})/div", Pattern.CASE_INSENSITIVE);
    private static final Pattern OFFSET_BESIDE = Pattern.compile(
            "offset\\s*[:=]?\\s*(?<offset>" + NUMBER + ")\\s*(?<unit>[^\\d\\s/,;]{1,3})?", Pattern.CASE_INSENSITIVE);
    /** Screens show at most ten divisions, and converters reach a little beyond. */
    private static final double HALF_SCREEN = 5.5;

    private final Preamble preamble;

    VerticalFacts(Preamble preamble) {
        this.preamble = preamble;
    }

    /**
     * The scale of one channel.
     *
     * @param name     the channel's name
     * @param channel  its number among the channels, from 0
     * @param channels number of channels
     * @param least    its smallest sample
     * @param greatest its largest sample
     */
    Optional<VerticalScale> of(String name, int channel, int channels, double least, double greatest) {
        Optional<Double> fact = value(SCALE, channel, channels).filter(s -> s > 0);
        if (fact.isPresent()) {
            Optional<Double> offset = value(OFFSET, channel, channels);
            return Optional.of(scale(fact.get(), offset, least, greatest));
        }
        return preamble.lines().stream()
                .filter(l -> channels == 1 || l.text().contains(name))
                .map(l -> fromLine(l.text(), least, greatest))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<Double> value(Pattern key, int channel, int channels) {
        for (Statement fact : preamble.facts()) {
            List<String> values = fact.values();
            if (key.matcher(fact.words()).matches()
                    && (values.size() == channels || (values.size() == 1 && channels == 1))) {
                String value = values.get(channel);
                return resolved(value.substring(value.lastIndexOf(':') + 1));
            }
        }
        return Optional.empty();
    }

    private static Optional<VerticalScale> fromLine(String text, double least, double greatest) {
        Matcher division = A_DIVISION.matcher(text);
        Optional<Double> perDivision =
                division.find() ? resolved(division.group("scale") + division.group("unit")) : Optional.empty();
        Matcher beside = OFFSET_BESIDE.matcher(text);
        Optional<Double> offset = beside.find()
                ? resolved(beside.group("offset") + (beside.group("unit") == null ? "" : beside.group("unit")))
                : Optional.empty();
        return perDivision.filter(s -> s > 0).map(s -> scale(s, offset, least, greatest));
    }

    private static Optional<Double> resolved(String text) {
        return ValueText.parse(text).flatMap(v -> {
            String unit = v.rest().replaceFirst("(?i)/div$", "");
            Optional<WrittenUnit> parsed =
                    WrittenUnit.parse(unit).filter(u -> u.unit() == Unit.VOLT || u.unit() == Unit.AMPERE);
            return unit.isEmpty() ? Optional.of(v.value()) : parsed.map(u -> u.resolve(v.value()));
        });
    }

    private static VerticalScale scale(double perDivision, Optional<Double> offset, double least, double greatest) {
        return new VerticalScale(
                perDivision,
                offset.map(o -> centre(perDivision, o, least, greatest)).orElse(OptionalDouble.empty()));
    }

    /** Instruments write the offset with either sign: the one under which the samples lie on the screen, if the other does not. */
    private static OptionalDouble centre(double perDivision, double offset, double least, double greatest) {
        boolean plus = fits(perDivision, offset, least, greatest);
        boolean minus = fits(perDivision, -offset, least, greatest);
        if (offset == 0) {
            return OptionalDouble.of(0);
        }
        return plus == minus ? OptionalDouble.empty() : OptionalDouble.of(plus ? offset : -offset);
    }

    private static boolean fits(double perDivision, double centre, double least, double greatest) {
        double half = HALF_SCREEN * perDivision;
        return least >= centre - half && greatest <= centre + half;
    }
}
