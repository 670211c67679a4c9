package clipwitness.bench;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Exports in layouts of the project's own invention. */
public final class ExportText {
    private ExportText() {}

    /** Headings that carry the unit: {@code time (s),in (V)}. */
    public static String unitsInHeadings(List<Column> columns) {
        return headings(columns, ",", c -> c.name() + " (" + c.unit() + ")") + "\n" + rows(columns, ",");
    }

    /** A row of names, then a row of units. */
    public static String unitsRow(List<Column> columns) {
        return headings(columns, ",", Column::name)
                + "\n"
                + headings(columns, ",", Column::unit)
                + "\n"
                + rows(columns, ",");
    }

    /** Semicolons, decimal commas, lines that end as on some desktops. */
    public static String decimalComma(List<Column> columns) {
        String text = headings(columns, ";", c -> c.name() + " [" + c.unit() + "]") + "\n" + rows(columns, ";");
        return text.replace('.', ',').replace("\n", "\r\n");
    }

    /** Rows of a key and a value, an empty line, and channels without a time. */
    public static String preamble(Recording recording) {
        List<Column> channels = recording.channels();
        return "samples," + recording.size()
                + "\nsample interval (s)," + plain(recording.interval())
                + "\nfirst sample (s)," + plain(recording.start())
                + "\nunit," + headings(channels, ",", Column::unit)
                + "\n\n" + headings(channels, ",", Column::name)
                + "\n" + rows(channels, ",");
    }

    /** The sample rate in a comment, and channels without a time. */
    public static String rateInComment(Recording recording) {
        List<Column> channels = recording.channels();
        return "# sample rate: " + Math.round(1 / recording.interval()) + " Hz\n"
                + headings(channels, ",", c -> c.name() + " (" + c.unit() + ")")
                + "\n"
                + rows(channels, ",");
    }

    private static String plain(double seconds) {
        return String.format(Locale.ROOT, "%.6f", seconds);
    }

    private static String headings(List<Column> columns, String separator, Function<Column, String> heading) {
        return columns.stream().map(heading).collect(Collectors.joining(separator));
    }

    private static String rows(List<Column> columns, String separator) {
        return IntStream.range(0, columns.get(0).values().size())
                .mapToObj(i -> columns.stream().map(c -> c.text(i)).collect(Collectors.joining(separator, "", "\n")))
                .collect(Collectors.joining());
    }
}
