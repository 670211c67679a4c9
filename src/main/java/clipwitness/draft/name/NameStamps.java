package clipwitness.draft.name;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Dates and times of day in names. */
final class NameStamps {
    private static final String TIME =
            "(?:[ t_-]*[0-2]\\d[-:h.]?[0-5]\\d(?:[-:m.]?[0-5]\\d)?(?:[.,]\\d{1,3})?)?(?!\\d)";
    /** Year first, as ISO 8601 has it, with or without hyphens. */
    private static final Pattern YEAR_FIRST =
            Pattern.compile("(?<!\\d)((?:19|20)\\d{2})([-. ]?)([01]\\d)\\2([0-3]\\d)" + TIME);
    /** Day first, with full stops. */
    private static final Pattern DAY_FIRST =
            Pattern.compile("(?<!\\d)([0-3]?\\d)\\.([01]?\\d)\\.((?:20)?\\d{2})" + TIME);
    /** A time of day alone, or seconds since 1970. */
    private static final Pattern CLOCK = Pattern.compile(
            "(?<!\\d)(?:[0-2]\\d[-:h][0-5]\\d[-:m][0-5]\\ds?|[0-2]\\dh[0-5]\\d|1[5-9]\\d{8}(?:\\d{3})?)(?!\\d)");

    private NameStamps() {}

    /** Takes all stamps out; the first date that was there. */
    static Optional<LocalDate> take(PathWords words) {
        Optional<LocalDate> first = words.take(YEAR_FIRST).flatMap(f -> date(f.match(), 1, 3, 4));
        Optional<LocalDate> date = first.or(() -> words.take(DAY_FIRST).flatMap(f -> date(f.match(), 3, 2, 1)));
        words.takeAll(YEAR_FIRST);
        words.takeAll(DAY_FIRST);
        words.takeAll(CLOCK);
        return date;
    }

    private static Optional<LocalDate> date(MatchResult match, int year, int month, int day) {
        try {
            int y = Integer.parseInt(match.group(year));
            return Optional.of(LocalDate.of(
                    y < 100 ? 2000 + y : y, Integer.parseInt(match.group(month)), Integer.parseInt(match.group(day))));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
