package clipwitness.batch.choice;

import clipwitness.capture.Channel;
import clipwitness.capture.TimeRecord;
import clipwitness.job.CaptureRow;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Tells where a row leaves it to the order of two channels which is the input, and their names say the opposite. */
public final class ChannelOrder {
    private static final Pattern INPUT = words("in|input|eingang|entrée|ingresso|entrada|gen|generator|stimulus");
    private static final Pattern OUTPUT = words("out|output|ausgang|sortie|uscita|salida");

    private ChannelOrder() {}

    /** A warning, or nothing. */
    public static Optional<Doubt> doubt(CaptureRow row, TimeRecord export) {
        List<Channel> channels = export.channels();
        boolean byOrder = row.input().isEmpty()
                && row.output().isEmpty()
                && row.inputFile().isEmpty();
        if (!byOrder || channels.size() != 2) {
            return Optional.empty();
        }
        String first = channels.get(0).name();
        String second = channels.get(1).name();
        boolean turned = (isOnly(OUTPUT, INPUT, first) && !isOnly(OUTPUT, INPUT, second))
                || (isOnly(INPUT, OUTPUT, second) && !isOnly(INPUT, OUTPUT, first));
        return turned
                ? Optional.of(Doubt.of(
                        Severity.WARNING, DoubtReason.UNIT_ASSUMED_ORDER, Argument.name(first), Argument.name(second)))
                : Optional.empty();
    }

    private static boolean isOnly(Pattern word, Pattern other, String name) {
        String spaced = name.replace('_', ' ');
        return word.matcher(spaced).find() && !other.matcher(spaced).find();
    }

    private static Pattern words(String words) {
        return Pattern.compile("(?iu)(?<!\\p{L})(?:" + words + ")(?!\\p{L})");
    }
}
