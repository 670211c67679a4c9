package clipwitness.reading;

import clipwitness.capture.Channel;
import clipwitness.capture.Samples;
import clipwitness.reading.file.Notes;
import clipwitness.reason.Argument;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds two channels, {@code CH1 High} and {@code CH1 Low}, that are the largest and the smallest value of each interval and no two waves: the words
 * alone may also name two outputs, so no sample of the one may lie below that of the other.
 */
final class HighAndLow {
    private static final Pattern WORD = Pattern.compile(
            "(?iu)(?<!\\p{L})(?:(?<high>high|hi|upper|hoch|ober\\p{L}*)|(?<low>low|lo|lower|tief|unter\\p{L}*))(?!\\p{L})");

    private HighAndLow() {}

    /** Notes the first such pair, unless the samples of the channel stand beside it. */
    static void note(List<Channel> channels, Notes notes) {
        for (Channel high : channels) {
            Optional<String> of = rest(high, "high")
                    .filter(r -> channels.stream()
                            .noneMatch(c -> !r.isEmpty() && letters(c.name()).equals(r)));
            Optional<Channel> low = of.flatMap(r -> channels.stream()
                    .filter(c -> rest(c, "low").filter(r::equals).isPresent())
                    .findFirst());
            if (low.isPresent() && above(high.samples(), low.get().samples())) {
                notes.doubt(
                        Severity.REFUSAL,
                        DoubtReason.REPEATED_TIME_COLUMNS,
                        Argument.name(low.get().name()),
                        Argument.name(high.name()));
                return;
            }
        }
    }

    /** What is left of a name without the word, where it holds it. */
    private static Optional<String> rest(Channel channel, String word) {
        Matcher m = WORD.matcher(channel.name());
        return m.find() && m.group(word) != null ? Optional.of(letters(m.replaceFirst(""))) : Optional.empty();
    }

    private static String letters(String name) {
        return name.replaceAll("[^\\p{L}\\p{N}]", "").toLowerCase(Locale.ROOT);
    }

    private static boolean above(Samples high, Samples low) {
        for (int i = 0; i < high.size(); i++) {
            if (high.at(i) < low.at(i)) {
                return false;
            }
        }
        return true;
    }
}
