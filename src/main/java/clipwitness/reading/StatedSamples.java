package clipwitness.reading;

import clipwitness.reading.file.Notes;
import clipwitness.reading.layout.Preamble;
import clipwitness.reading.layout.Statement;
import clipwitness.reading.number.ValueText;
import clipwitness.reason.Argument;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Compares the number of samples that a preamble states with the rows that the file holds: a copy that broke off in the middle reads like a shorter
 * record. The depth of an instrument's memory is no such number, as an export may hold only what the screen showed.
 */
final class StatedSamples {
    /** Share of the record that may be missing before it is more than a note: that of gaps within a record (measurement book, section 1). */
    private static final double SLIGHT = 0.01;

    private static final Set<String> KEYS = Set.of(
            "record length",
            "record points",
            "samples",
            "sample count",
            "sample number",
            "samples count",
            "number of samples",
            "no of samples",
            "num samples",
            "nr of samples",
            "total samples",
            "n samples",
            "points",
            "point count",
            "points count",
            "number of points",
            "no of points",
            "num points",
            "nr of points",
            "total points",
            "n points",
            "nr pt",
            "nr pts",
            "data points",
            "number of data points",
            "waveform points",
            "waveform length",
            "count",
            "anzahl werte",
            "anzahl messwerte",
            "anzahl abtastwerte",
            "anzahl punkte",
            "anzahl messpunkte",
            "messpunkte",
            "messwerte",
            "abtastwerte",
            "nombre de points",
            "nombre d échantillons",
            "número de puntos",
            "número de muestras",
            "numero di punti",
            "numero di campioni");

    private static final Pattern A_CHANNEL = Pattern.compile("\\s*(?:/|per )\\s*(?:ch|channel|kanal|trace)$");
    private static final Pattern OF_SAMPLES =
            Pattern.compile("(?i)(?<prefix>[kM]?)\\s*(?:pts?|points?|samples?|sa|s|punkte|werte)?\\.?");

    private StatedSamples() {}

    /**
     * Notes a doubt where every number of samples that the preamble states is larger than that of the samples that are there.
     *
     * @param held samples that the rows stand for, those included that an index or the interval shows to be left out between them
     */
    static void compare(Preamble preamble, long held, Notes notes) {
        preamble.facts().stream()
                .filter(StatedSamples::speaksOfSamples)
                .flatMap(f -> number(f.value()).stream())
                .min(Comparator.comparingDouble(Stated::least))
                .filter(n -> held < n.least())
                .ifPresent(n -> notes.doubt(
                        n.least() - held <= SLIGHT * n.least() ? Severity.NOTE : Severity.WARNING,
                        DoubtReason.MISSING_SAMPLES_END,
                        Argument.count(Math.round(n.written())),
                        Argument.count(held)));
    }

    /** A number of samples as it is written, and the least that it can mean: {@code 1.4 Mpts} is rounded. */
    private record Stated(double written, double least) {}

    private static boolean speaksOfSamples(Statement fact) {
        return KEYS.contains(A_CHANNEL.matcher(fact.words()).replaceFirst(""));
    }

    private static Optional<Stated> number(String text) {
        Optional<ValueText> value = ValueText.parse(text);
        Matcher unit = OF_SAMPLES.matcher(value.map(ValueText::rest).orElse("-"));
        if (value.isEmpty() || !unit.matches()) {
            return Optional.empty();
        }
        String prefix = unit.group("prefix").toLowerCase(Locale.ROOT);
        double factor = prefix.isEmpty() ? 1 : prefix.equals("k") ? 1e3 : 1e6;
        double written = value.get().value() * factor;
        double least = written - (factor == 1 ? 0 : value.get().resolution() * factor);
        return written >= 1 && written < Integer.MAX_VALUE ? Optional.of(new Stated(written, least)) : Optional.empty();
    }
}
