package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How the instrument made samples: {@code sample}, {@code average N} or {@code peak-detect}. */
final class Acquisition {
    private static final List<String> WITHOUT_NUMBER = List.of("sample", "peak-detect");
    private static final Pattern AVERAGE = Pattern.compile("average\\s*(?<count>[1-9]\\d{0,6})");

    private Acquisition() {}

    /** The form in its usual spelling; a fault and nothing where it is unknown. */
    static Optional<String> of(Field field) {
        String folded = field.text().toLowerCase(Locale.ROOT);
        Matcher average = AVERAGE.matcher(folded);
        if (average.matches()) {
            return Optional.of("average " + average.group("count"));
        }
        if (WITHOUT_NUMBER.contains(folded)) {
            return Optional.of(folded);
        }
        field.fault(
                ErrorCode.UNKNOWN_NAME,
                "unknown acquisition " + field.quoted(),
                NameWords.insteadOf(field.text(), List.of("sample", "average 16", "peak-detect")));
        return Optional.empty();
    }
}
