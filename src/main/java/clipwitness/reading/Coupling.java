package clipwitness.reading;

import clipwitness.reading.file.Line;
import clipwitness.reading.layout.Preamble;
import clipwitness.reading.layout.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Whether the preamble says that a channel was AC coupled. It says so where a key names coupling and nothing else: the coupling of
 * a trigger, of a radio input or of a source is not that of a channel.
 */
final class Coupling {
    private static final Set<String> COUPLING = Set.of(
            "coupling",
            "kopplung",
            "couplage",
            "accoppiamento",
            "acoplamiento",
            "acoplamento",
            "koppeling",
            "sprzężenie");
    /** What may stand beside: words for a channel and its input. */
    private static final Set<String> BESIDE = Set.of(
            "vertical",
            "vert",
            "v",
            "y",
            "channel",
            "channels",
            "chan",
            "ch",
            "c",
            "kanal",
            "canal",
            "canale",
            "voie",
            "input",
            "in",
            "eingang",
            "entrée",
            "ingresso",
            "entrada",
            "analog",
            "analogue",
            "type",
            "mode",
            "of",
            "the",
            "scope",
            "probe",
            "trace");

    private static final Pattern NUMBERED = Pattern.compile("(?:ch|chan|channel|c|y|v|kanal|canal)?\\d{1,2}");
    private static final Pattern SECTION = Pattern.compile("\\[.*]|[^\\d,;\\t:=]+:?");

    private Coupling() {}

    /**
     * Whether the preamble says so.
     *
     * @param name     the channel's name
     * @param channel  number of the channel among the channels, from 0
     * @param channels number of channels
     */
    static boolean isAc(Preamble preamble, String name, int channel, int channels) {
        for (Statement fact : preamble.facts()) {
            List<String> words = List.of(fact.words().split(" "));
            List<String> values = fact.values();
            List<String> own = Arrays.asList(name.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"));
            boolean named = words.containsAll(own);
            boolean fits = named || values.size() == channels || (values.size() == 1 && channels == 1);
            if (fits && speaksOfCoupling(words, own) && !inSectionOfAnother(preamble, fact)) {
                String value = values.get(named ? 0 : channel);
                return value.substring(value.lastIndexOf(':') + 1)
                        .strip()
                        .toLowerCase(Locale.ROOT)
                        .matches("ac\\b.*");
            }
        }
        return false;
    }

    private static boolean speaksOfCoupling(List<String> words, List<String> name) {
        return words.stream().anyMatch(COUPLING::contains)
                && words.stream()
                        .allMatch(w -> COUPLING.contains(w)
                                || BESIDE.contains(w)
                                || name.contains(w)
                                || NUMBERED.matcher(w).matches());
    }

    /** Whether the closest heading of a section above the statement is that of the trigger. */
    private static boolean inSectionOfAnother(Preamble preamble, Statement fact) {
        String section = "";
        for (Line line : preamble.lines()) {
            if (line.number() < fact.line() && SECTION.matcher(line.text()).matches()) {
                section = line.text().toLowerCase(Locale.ROOT);
            }
        }
        return section.contains("trig");
    }
}
