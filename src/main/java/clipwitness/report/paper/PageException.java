package clipwitness.report.paper;

import java.util.Objects;

/** A filled page cannot be printed: it is no well-formed XHTML, names a figure that is not there, or asks for what no page can hold. */
public final class PageException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String remedy;
    private final int line;
    private final String named;

    PageException(String what, String remedy) {
        this(0, "", what, remedy);
    }

    PageException(int line, String what, String remedy) {
        this(line, "", what, remedy);
    }

    PageException(String named, String what, String remedy) {
        this(0, named, what, remedy);
    }

    private PageException(int line, String named, String what, String remedy) {
        super(what);
        this.line = line;
        this.named = Objects.requireNonNull(named, "named");
        this.remedy = Objects.requireNonNull(remedy, "remedy");
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
