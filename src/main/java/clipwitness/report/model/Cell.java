package clipwitness.report.model;

/**
 * A cell of a table.
 *
 * @param text        its text
 * @param uncertainty expanded uncertainty to the same place, empty where there is none
 * @param kind        pass, fail, undecided, described, or empty
 */
public record Cell(String text, String uncertainty, String kind) {
    /** A cell of text. */
    public static Cell of(String text) {
        return new Cell(text, "", "");
    }
}
