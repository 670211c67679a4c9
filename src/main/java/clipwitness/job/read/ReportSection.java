package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import clipwitness.job.Attachment;
import clipwitness.job.Paper;
import clipwitness.job.ReportInfo;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads the section {@code report}. */
final class ReportSection {
    private static final Pattern NUMBER = Pattern.compile("[A-Za-z0-9_-][A-Za-z0-9._-]{0,99}");

    /** Language codes after ISO 639-1 and ISO 639-2. */
    private static final Pattern LANGUAGE = Pattern.compile("[a-z]{2,3}");

    private static final String DEFAULT_TEMPLATE = "customer";
    private static final String DEFAULT_LANGUAGE = "en";

    private ReportSection() {}

    /** The section, or nothing where number or date are missing or wrong. */
    static Optional<ReportInfo> read(Section section) {
        Optional<String> number =
                section.required("number", "Write for example number: HL-0231").flatMap(ReportSection::number);
        String title = section.text("title");
        Optional<LocalDate> date =
                section.required("date", "Write for example date: 2026-05-04").flatMap(Field::date);
        Optional<LocalDate> received = section.field("received").flatMap(Field::date);
        if (date.isPresent() && received.filter(r -> r.isAfter(date.get())).isPresent()) {
            section.fault(
                    ErrorCode.BAD_VALUE,
                    "received",
                    "the unit came in after the date of the report",
                    "Correct one of the two dates");
        }
        OptionalInt revision =
                section.field("revision").map(f -> f.whole(0, 9999)).orElse(OptionalInt.empty());
        Optional<String> replaces = section.field("replaces").flatMap(ReportSection::number);
        if (replaces.isPresent() && replaces.equals(number)) {
            section.fault(
                    ErrorCode.BAD_VALUE,
                    "replaces",
                    "the report would replace itself",
                    "Write the number of the earlier report, and give this one a number of its own");
        }
        if (revision.orElse(0) > 1 && replaces.isEmpty()) {
            section.fault(
                    ErrorCode.MISSING_KEY,
                    "revision",
                    "a revision after the first must say which report it replaces",
                    "Add replaces: and the number of the earlier report");
        }
        String template = section.field("template").map(Field::text).orElse(DEFAULT_TEMPLATE);
        String language =
                section.field("language").flatMap(ReportSection::language).orElse(DEFAULT_LANGUAGE);
        Paper paper = section.field("paper")
                .flatMap(f -> f.choice(List.of(Paper.values()), Paper::code, "paper"))
                .orElse(Paper.A4);
        Set<Attachment> attach =
                section.node("attach").map(ReportSection::attach).orElse(EnumSet.allOf(Attachment.class));
        return number.flatMap(n -> date.map(
                d -> new ReportInfo(n, title, d, received, revision, replaces, template, language, paper, attach)));
    }

    private static Optional<String> number(Field field) {
        if (NUMBER.matcher(field.text()).matches()) {
            return Optional.of(field.text());
        }
        field.fault(
                field.quoted() + " cannot be the number of a report",
                "Use letters A to Z, digits and . _ -, no full stop first, at most 100 of them");
        return Optional.empty();
    }

    private static Optional<String> language(Field field) {
        Locale locale = Locale.forLanguageTag(field.text());
        String tag = locale.toLanguageTag();
        if (LANGUAGE.matcher(locale.getLanguage()).matches() && tag.equalsIgnoreCase(field.text())) {
            return Optional.of(tag);
        }
        field.fault(field.quoted() + " is no language tag", "Write for example en, de or pt-BR");
        return Optional.empty();
    }

    private static Set<Attachment> attach(SheetNode node) {
        Set<Attachment> attach = EnumSet.noneOf(Attachment.class);
        for (Field field : node.texts()) {
            field.choice(List.of(Attachment.values()), Attachment::code, "attachment")
                    .ifPresent(attach::add);
        }
        return attach;
    }
}
