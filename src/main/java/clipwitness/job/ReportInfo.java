package clipwitness.job;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The sheet's section {@code report}.
 *
 * @param number   letters, digits, full stop, underscore, hyphen; names the output files
 * @param title    title, empty where the sheet has none
 * @param date     date of the report
 * @param received when the unit came in
 * @param revision revision
 * @param replaces number of the report that this one replaces
 * @param template built-in template or path of a template folder
 * @param language language tag of words and numbers on paper
 * @param paper    paper
 * @param attach   what is attached to the PDF
 */
public record ReportInfo(
        String number,
        String title,
        LocalDate date,
        Optional<LocalDate> received,
        OptionalInt revision,
        Optional<String> replaces,
        String template,
        String language,
        Paper paper,
        Set<Attachment> attach) {
    /** Checks that all parts are there. */
    public ReportInfo {
        Objects.requireNonNull(number, "number");
        Objects.requireNonNull(date, "date");
        EnumSet<Attachment> copy = EnumSet.noneOf(Attachment.class);
        copy.addAll(attach);
        attach = Collections.unmodifiableSet(copy);
    }
}
