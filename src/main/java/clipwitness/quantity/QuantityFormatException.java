package clipwitness.quantity;

/** A text is not the quantity that was wanted. */
public final class QuantityFormatException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String what;
    private final String remedy;

    QuantityFormatException(String what, String remedy) {
        super(what + ". " + remedy);
        this.what = what;
        this.remedy = remedy;
    }

    /** What is wrong, a clause without full stop. */
    public String what() {
        return what;
    }

    /** What would be right, a sentence without full stop. */
    public String remedy() {
        return remedy;
    }
}
