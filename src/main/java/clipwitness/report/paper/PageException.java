package clipwitness.report.paper;

/** A filled page is no well-formed XML. */
public final class PageException extends Exception {
    private static final long serialVersionUID = 1L;

    private final int line;
    private final String text;

    PageException(int line, String text, String message) {
        super(message);
        this.line = line;
        this.text = text;
    }

    /** Line of the filled page, from 1. */
    public int line() {
        return line;
    }

    /** What stands there. */
    public String text() {
        return text;
    }
}
