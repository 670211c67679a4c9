package clipwitness.report.model;

/**
 * A doubt about one or several captures.
 *
 * @param kind  note, warning or refusal
 * @param word  the same as a word
 * @param text  the doubt in a sentence
 * @param files  captures that it concerns
 * @param places the same as states and settings
 */
public record ListedDoubt(String kind, String word, String text, String files, String places) {}
