package clipwitness.report.paper;

import java.util.Objects;

/** A filled page cannot be printed: it is no well-formed XHTML, or names a figure that is not there. */
public final class PageException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String remedy;

    PageException(String what, String remedy) {
        super(what);
        this.remedy = Objects.requireNonNull(remedy, "remedy");
    }

    /** What to do, a sentence. */
    public String remedy() {
        return remedy;
    }
}
