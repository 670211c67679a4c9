package clipwitness.report;

/** How the user chose the place of a document, and so how another is chosen. */
public enum Destination {
    /** By the option {@code --out}, or by leaving it out. */
    OUT("another place with --out"),
    /** By the option {@code --plan}. */
    PLAN("another place with --plan"),
    /** By naming a folder. */
    FOLDER("another folder");

    private final String other;

    Destination(String other) {
        this.other = other;
    }

    /** What else can be chosen, to stand after "Choose" or "Name". */
    public String other() {
        return other;
    }
}
