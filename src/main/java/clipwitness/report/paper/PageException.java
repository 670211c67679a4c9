package clipwitness.report.paper;

import java.util.Objects;

/** A filled page cannot be printed: it is no well-formed XHTML, names a figure that is not there, or asks for what no page can hold. */
public final class PageException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String remedy;
    private final int line;
    private final boolean tooLong;
    private final String named;

    PageException(String what, String remedy) {
        this(0, "", false, what, remedy);
    }

    PageException(int line, String what, String remedy) {
        this(line, "", false, what, remedy);
    }

    PageException(String named, String what, String remedy) {
        this(0, named, false, what, remedy);
    }

    private PageException(int line, String named, boolean tooLong, String what, String remedy) {
        super(what);
        this.line = line;
        this.tooLong = tooLong;
        this.named = Objects.requireNonNull(named, "named");
        this.remedy = Objects.requireNonNull(remedy, "remedy");
    }

    /** A document of more pages than it may have. */
    static PageException tooLong(String what, String remedy) {
        return new PageException(0, "", true, what, remedy);
    }

    /** Whether the document would have more pages than it may have. */
    public boolean isTooLong() {
        return tooLong;
    }

    /** What stands at the place, where its line is not known: the name of a picture, for example; empty where nothing is known. */
    public String named() {
        return named;
    }

    /** Line of the filled page, from 1; 0 where it is not known. */
    public int line() {
        return line;
    }

    /** What to do, a sentence. */
    public String remedy() {
        return remedy;
    }
}
