package clipwitness.report.paper;

import java.time.LocalDate;

/**
 * What a document says of itself.
 *
 * @param title    title
 * @param author   who answers for it
 * @param subject  one line
 * @param language language tag
 * @param date     date; the document holds no other time
 * @param software program and version
 * @param digest   hexadecimal digest of the inputs, from which the document's identity is made; 32 digits or more
 */
public record DocumentInfo(
        String title, String author, String subject, String language, LocalDate date, String software, String digest) {}
