package clipwitness.reading.time;

import clipwitness.quantity.Unit;
import clipwitness.reading.layout.ColumnRole;
import clipwitness.reading.layout.Heading;
import clipwitness.reading.layout.Preamble;
import clipwitness.reading.layout.Statement;
import clipwitness.reading.layout.Units;
import clipwitness.reading.number.ValueText;
import clipwitness.reading.number.WrittenUnit;
import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;
import clipwitness.reason.Remark;
import clipwitness.reason.Word;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The sample interval as the preamble states it.
 *
 * @param interval   in s, above 0
 * @param resolution half a unit of the last digit written, relative to the value
 * @param fact       the statement that it was read from
 * @param clear      whether a unit or a word says that it is one of time: the step of a sweep is called so, too
 * @param grouped    whether a mark in the number is taken to part its thousands, which nothing says
 */
public record Sampling(double interval, double resolution, Statement fact, boolean clear, boolean grouped) {
    private static final Pattern SAMPLED =
            Pattern.compile(".*(?:sampl|abtast|chantillon|campion|muestre|bemonster|acquisition).*");
    private static final Pattern RATE = Pattern.compile(".*(?:rate|freq|fréq|frec|clock|speed|taux).*");
    private static final Pattern INTERVAL = Pattern.compile(".*(?:interval|period|increment|step|spacing|delta).*");
    private static final Pattern OF_TIME = Pattern.compile(SAMPLED.pattern()
            + "|.*(?:time|zeit|temps|tiempo|horiz|second).*|(?:.*\\b)?(?:dt|δt|tinc|t|h|hor|fs|sps)(?:\\b.*)?");
    private static final Set<String> RATE_ALONE = Set.of("rate", "fs", "samples per second", "samples/s", "sps");
    private static final Set<String> INTERVAL_ALONE = Set.of(
            "increment",
            "inc",
            "step",
            "interval",
            "x increment",
            "x inc",
            "xincrement",
            "xinc",
            "xincr",
            "dx",
            "dt",
            "delta",
            "delta t",
            "δt",
            "delta x",
            "delta time",
            "time step",
            "time increment",
            "time interval",
            "x interval",
            "x step",
            "horizontal interval",
            "t inc",
            "t increment",
            "x resolution",
            "h resolution",
            "time resolution",
            "hor interval",
            "horiz interval",
            "tinc",
            "time per sample",
            "seconds per sample");

    /** The first statement of the preamble that gives a sample interval or rate. */
    public static Optional<Sampling> of(Preamble preamble) {
        return all(preamble).stream().findFirst();
    }

    /** All statements of the preamble that give one, in order. */
    static List<Sampling> all(Preamble preamble) {
        return preamble.facts().stream()
                .map(f -> of(f, preamble))
                .flatMap(Optional::stream)
                .toList();
    }

    /** The same as the source of a doubt. */
    Remark statement() {
        return Remark.of(Word.STATEMENT_ON_LINE, Argument.name(fact.key()), Argument.count(fact.line()));
    }

    /** Where the evidence says the figure stands. */
    Argument place() {
        return Argument.word(LayoutRemark.STATEMENT, Argument.name(fact.key()), Argument.count(fact.line()));
    }

    private static Optional<Sampling> of(Statement fact, Preamble preamble) {
        Heading key = RATE_ALONE.contains(fact.words())
                ? new Heading(fact.key(), Optional.empty(), ColumnRole.UNKNOWN)
                : Heading.of(fact.key());
        String words = new Statement(key.name(), fact.values(), fact.line()).words();
        boolean rate =
                (SAMPLED.matcher(words).matches() && RATE.matcher(words).matches()) || RATE_ALONE.contains(words);
        boolean interval =
                (SAMPLED.matcher(words).matches() && INTERVAL.matcher(words).matches())
                        || INTERVAL_ALONE.contains(words);
        Optional<GroupedDigits> grouped = GroupedDigits.of(fact, preamble.mark());
        Optional<ValueText> value =
                ValueText.parse(grouped.map(GroupedDigits::text).orElseGet(() -> afterTag(fact.value())));
        if ((!rate && !interval) || value.isEmpty() || !(value.get().value() > 0)) {
            return Optional.empty();
        }
        boolean strange = !value.get().rest().isEmpty() && value.get().unit().isEmpty();
        if (strange) {
            return Optional.empty(); // a figure in an unknown unit is none
        }
        Optional<WrittenUnit> stated = value.get().unit().or(fact::unitBeside).or(key::unit);
        Optional<WrittenUnit> unit = stated.or(() -> rate ? Optional.empty() : Units.ofTime(preamble));
        boolean doubtful = grouped.filter(GroupedDigits::doubt).isPresent();
        return figure(value.get(), unit, rate && !interval, fact, doubtful);
    }

    private static Optional<Sampling> figure(
            ValueText value, Optional<WrittenUnit> unit, boolean rate, Statement fact, boolean grouped) {
        double resolved = unit.map(u -> u.resolve(value.value())).orElse(value.value());
        Optional<Unit> base = unit.map(WrittenUnit::unit);
        boolean hertz = base.map(u -> u == Unit.HERTZ).orElse(rate);
        boolean known = base.isEmpty() || base.get() == Unit.HERTZ || base.get() == Unit.SECOND;
        double interval = hertz ? 1 / resolved : resolved;
        if (!known || !(interval > 0 && interval < Double.POSITIVE_INFINITY)) {
            return Optional.empty();
        }
        boolean clear = base.isPresent() || OF_TIME.matcher(fact.words()).matches();
        return Optional.of(new Sampling(interval, value.resolution() / value.value(), fact, clear, grouped));
    }

    /** Some exports tag a value with the channels it holds for: {@code CH1:2e-6}. */
    private static String afterTag(String value) {
        return value.substring(value.lastIndexOf(':') + 1);
    }
}
