package clipwitness.reading;

import clipwitness.reading.file.Notes;
import clipwitness.reading.layout.Column;
import clipwitness.reason.Argument;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds columns that hold the smallest and the largest value of each interval: {@code CH1 min} beside {@code CH1 max}. */
final class EnvelopeColumns {
    private static final Pattern WORD = Pattern.compile("(?i)(?<![\\p{L}])(?:(?<least>min)|max)(?:imum)?(?![\\p{L}])");

    private EnvelopeColumns() {}

    /** Notes the first pair of such columns among the columns of values: the record is no wave. */
    static void note(List<Column> values, Notes notes) {
        Map<String, Column> least = new HashMap<>();
        Map<String, Column> greatest = new HashMap<>();
        for (Column column : values) {
            Matcher word = WORD.matcher(column.heading().name());
            if (word.find()) {
                String rest =
                        word.replaceFirst("").replaceAll("[^\\p{L}\\p{N}]", "").toLowerCase(Locale.ROOT);
                (word.group("least") == null ? greatest : least).put(rest, column);
            }
        }
        least.keySet().stream()
                .filter(greatest::containsKey)
                .sorted()
                .findFirst()
                .ifPresent(k -> note(least.get(k), greatest.get(k), notes));
    }

    private static void note(Column least, Column greatest, Notes notes) {
        notes.doubt(
                Severity.REFUSAL,
                DoubtReason.REPEATED_TIME_COLUMNS,
                Argument.name(least.called()),
                Argument.name(greatest.called()));
    }
}
