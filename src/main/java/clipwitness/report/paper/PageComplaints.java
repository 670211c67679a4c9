package clipwitness.report.paper;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.LogMessageId;
import com.openhtmltopdf.util.LogMessageId.LogMessageId0Param;
import com.openhtmltopdf.util.LogMessageId.LogMessageId1Param;
import com.openhtmltopdf.util.LogMessageId.LogMessageId2Param;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Collects what the renderer would leave out in silence: pictures and fonts that it cannot read are faults of the page, styles are remarks. */
final class PageComplaints implements Consumer<Diagnostic> {
    private static final Map<LogMessageId, String> FAULTS = Map.of(
            LogMessageId1Param.EXCEPTION_CANT_READ_IMAGE_FILE_FOR_URI, "picture",
            LogMessageId1Param.LOAD_UNRECOGNIZED_IMAGE_FORMAT_FOR_URI, "picture",
            LogMessageId1Param.LOAD_SVG_IMAGE_WITHOUT_SVG_DRAWER, "picture",
            LogMessageId1Param.EXCEPTION_FAILED_TO_LOAD_BACKGROUND_IMAGE_AT_URI, "picture",
            LogMessageId1Param.EXCEPTION_COULD_NOT_LOAD_FONT, "font",
            LogMessageId1Param.EXCEPTION_COULD_NOT_LOAD_FONT_FACE, "font",
            LogMessageId0Param.CSS_PARSE_MUST_PROVIDE_AT_LEAST_A_FONT_FAMILY_AND_SRC_IN_FONT_FACE_RULE, "font");

    /** The renderer counts lines from 0 where it ignores a declaration, and from 1 where it skips one. */
    private static final Pattern STYLE =
            Pattern.compile("(?<what>.*) at line (?<line>\\d+)\\. (?<act>Ignoring|Skipping) .*");

    private static final Pattern INLINE = Pattern.compile("#inline_style_(\\d+)");
    private static final int LONGEST = 60;

    private final List<StyleFault> styles = new ArrayList<>();
    private Optional<PageException> fault = Optional.empty();

    @Override
    public void accept(Diagnostic diagnostic) {
        Watch.stopIfInterrupted(); // a loop that complains can be ended
        Object[] args = diagnostic.getArgs();
        String kind = FAULTS.get(diagnostic.getLogMessageId());
        if (kind != null && fault.isEmpty()) {
            fault = Optional.of(unreadable(kind, args == null || args.length == 0 ? "" : String.valueOf(args[0])));
        }
        if (diagnostic.getLogMessageId() == LogMessageId2Param.CSS_PARSE_GENERIC_MESSAGE) {
            style(String.valueOf(args[0]), String.valueOf(args[1]));
        }
    }

    private static PageException unreadable(String kind, String name) {
        String shown = name.startsWith(PageAccess.PREFIX) ? name.substring(PageAccess.PREFIX.length()) : name;
        return new PageException(
                shown,
                "the " + kind + " '" + (shown.length() > LONGEST ? shown.substring(0, LONGEST) + "…" : shown)
                        + "' cannot be read",
                kind.equals("font")
                        ? "Save it again as a TrueType font (.ttf)"
                        : "Save it again as a whole JPEG or PNG file inside the template's folder");
    }

    private void style(String file, String message) {
        Matcher said = STYLE.matcher(message);
        Matcher inline = INLINE.matcher(file);
        int line = said.matches()
                ? Integer.parseInt(said.group("line")) + (said.group("act").equals("Ignoring") ? 1 : 0)
                : 0;
        String what = said.matches() ? said.group("what") : message;
        boolean isInline = inline.matches();
        String name = file.startsWith(PageAccess.PREFIX) ? file.substring(PageAccess.PREFIX.length()) : file;
        styles.add(new StyleFault(isInline ? "" : name, isInline ? Integer.parseInt(inline.group(1)) : 0, line, what));
    }

    /** Throws the first thing that could not be read. */
    void check() throws PageException {
        if (fault.isPresent()) {
            throw fault.get();
        }
    }

    /** Styles that were left out. */
    List<StyleFault> styles() {
        return styles.stream().distinct().toList();
    }
}
