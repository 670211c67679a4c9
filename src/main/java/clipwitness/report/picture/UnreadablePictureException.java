package clipwitness.report.picture;

/** A picture cannot be printed; the message is a clause that says why: {@code is damaged}. */
public final class UnreadablePictureException extends Exception {
    private static final long serialVersionUID = 1L;

    UnreadablePictureException(String what) {
        super(what);
    }

    UnreadablePictureException(String what, Throwable cause) {
        super(what, cause);
    }
}
