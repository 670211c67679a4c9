package clipwitness.reading.time;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.reading.layout.Column;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times that a heading counts in minutes, divisions or samples: they are not read as seconds. */
final class ForeignTimeUnit {
    private static final Pattern STATED = Pattern.compile(
            "(?iu).*[(\\[/,]\\s*(?<unit>min|mins|minutes?|minuten|h|hrs?|hours?|stunden?|days?|tage?|div|divs|divisions?"
                    + "|sa|samples?|points?|pts|ticks?|counts?|cycles?|frames?|steps?)\\s*[)\\]]?");

    private ForeignTimeUnit() {}

    /** Refuses such times, with the setting that settles them. */
    static void refuse(String file, Column time) throws InputException {
        Matcher stated = STATED.matcher(time.heading().name());
        if (stated.matches()) {
            throw new InputException(
                    ErrorCode.NO_INTERVAL,
                    new Origin(file, 0, "column " + time.called()),
                    "the time is counted in '" + stated.group("unit") + "', not in seconds or parts of them",
                    "State the sample interval: the column interval of captures.csv or the option --interval of look");
        }
    }
}
