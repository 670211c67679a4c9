package clipwitness.reading;

import clipwitness.reading.file.Notes;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.Columns;
import clipwitness.reason.Argument;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.LayoutRemark;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Finds columns that hold no samples but extremes of each interval: {@code CH1 min} beside {@code CH1 max}, or {@code CH1 Peak Detect}. Beside the
 * samples of the same channel they are left out; alone they are no wave.
 */
final class EnvelopeColumns {
    private static final Pattern WORD =
            Pattern.compile("(?iu)(?<![\\p{L}])(?:(?<least>min(?:imum)?)|(?<greatest>max(?:imum)?)"
                    + "|(?<detected>(?:peaks?|pk)[ ._-]*det(?:ect(?:ed|ion|or)?)?|pkdet(?:ect)?|spitzenwert(?:erfassung|erkennung)?|hüllkurve"
                    + "|détection(?: de)? crêtes?|rilevamento(?: di)? picchi|detección de picos?|envelope)"
                    + "|(?<peak>peaks?|pk|pd|crêtes?|picc[oh]i?|picos?|spitzen?))(?![\\p{L}])");

    /** What the groups of the pattern say, in their order. */
    private static final List<String> KINDS = List.of("least", "greatest", "detected", "peak");

    /** A column of extremes: what it is of, and which of them. */
    private record Extremes(Column column, String of, String kind) {
        /** Peaks of the channel in front of them, as no name says of which. */
        boolean unnamed() {
            return of.isEmpty() && (kind.equals("detected") || kind.equals("peak"));
        }
    }

    private EnvelopeColumns() {}

    /** The columns without those of extremes that stand beside samples of the same channel. */
    static Columns leaveOut(Columns columns, Notes notes) {
        Columns rest = columns;
        List<String> channels = columns.values().stream()
                .filter(c -> extremes(c).isEmpty())
                .map(c -> letters(c.heading().name()))
                .filter(n -> !n.isEmpty())
                .toList();
        List<String> left = new ArrayList<>();
        boolean besideSamples = false;
        for (Column column : columns.values()) {
            Optional<Extremes> extremes = extremes(column);
            boolean ofChannelBefore =
                    besideSamples && extremes.filter(Extremes::unnamed).isPresent();
            besideSamples = extremes.isEmpty();
            if (ofChannelBefore
                    || extremes.filter(e -> channels.contains(e.of())).isPresent()) {
                rest = rest.with(column, Column.Use.LEFT_OUT);
                left.add(column.called());
            }
        }
        if (!left.isEmpty()) {
            notes.evidence(
                    LayoutRemark.LEFT_OUT_EXTREMES, Argument.name(left.stream().collect(Collectors.joining(", "))));
        }
        return rest;
    }

    /** Notes the first pair of such columns among the columns of values, or the first of detected peaks: the record is no wave. */
    static void note(List<Column> values, Notes notes) {
        List<Extremes> all = values.stream().flatMap(c -> extremes(c).stream()).toList();
        for (Extremes least : of("least", all)) {
            for (Extremes greatest : of("greatest", all)) {
                if (least.of().equals(greatest.of())) {
                    note(least.column(), greatest.column(), notes);
                    return;
                }
            }
        }
        of("detected", all).stream()
                .findFirst()
                .ifPresent(e -> notes.doubt(
                        Severity.REFUSAL,
                        DoubtReason.REPEATED_TIME_PEAKS,
                        Argument.name(e.column().called())));
    }

    private static void note(Column least, Column greatest, Notes notes) {
        notes.doubt(
                Severity.REFUSAL,
                DoubtReason.REPEATED_TIME_COLUMNS,
                Argument.name(least.called()),
                Argument.name(greatest.called()));
    }

    private static List<Extremes> of(String kind, List<Extremes> all) {
        return all.stream().filter(e -> e.kind().equals(kind)).toList();
    }

    private static Optional<Extremes> extremes(Column column) {
        Matcher word = WORD.matcher(column.heading().name());
        if (!word.find()) {
            return Optional.empty();
        }
        List<MatchResult> words = word.reset().results().toList();
        String kind = KINDS.stream()
                .filter(k -> words.stream().anyMatch(w -> w.group(KINDS.indexOf(k) + 1) != null))
                .findFirst()
                .orElseThrow();
        return Optional.of(new Extremes(column, letters(word.replaceAll("")), kind));
    }

    private static String letters(String name) {
        return name.replaceAll("[^\\p{L}\\p{N}]", "").toLowerCase(Locale.ROOT);
    }
}
