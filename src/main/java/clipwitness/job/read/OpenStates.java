package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.Origin;
import clipwitness.job.Job;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * States that a job sheet holds only in lines that are commented out, as a draft writes those of which the role is not known. A row that names
 * such a state asks for the answer, once for each state.
 */
final class OpenStates {
    private static final Pattern LINE = Pattern.compile("\\s*#\\s*(\"?)([^\"#:]+)\\1\\s*:\\s*\\{.*\\brole\\b.*");

    private final Map<String, Integer> lines = new LinkedHashMap<>();
    private final Set<String> asked = new HashSet<>();

    /** The open states of a sheet's text. */
    OpenStates(String sheet) {
        int line = 0;
        for (String text : sheet.lines().toList()) {
            line++;
            Matcher matcher = LINE.matcher(text);
            if (matcher.matches()) {
                lines.putIfAbsent(matcher.group(2).strip(), line);
            }
        }
    }

    /** Whether a state is open; then its question is asked, if it was not before. */
    boolean asks(Field state) {
        Integer line = lines.get(state.text());
        if (line != null && asked.add(state.text())) {
            state.faults()
                    .add(
                            ErrorCode.OPEN_QUESTION,
                            Origin.of(Job.SHEET_FILE, line),
                            "the state " + state.quoted() + " is commented out, and rows of " + Job.TABLE_FILE
                                    + " name it",
                            "Take the # away before one line of it, the one with the right role");
        }
        return line != null;
    }
}
