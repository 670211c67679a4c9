package clipwitness.fault;

/** What happened to an input between its first and its last reading. */
public final class Meanwhile {
    private static final String REMEDY = "Leave the folder alone while the program reads it, then run it again";

    private Meanwhile() {}

    /** Its content, or what stands under its name, is another. */
    public static Problem changed(String file) {
        return new Problem(Origin.of(file), "the file was changed while it was read", REMEDY);
    }

    /** It is there no more, or can be read no more. */
    public static Problem lost(String file) {
        return new Problem(Origin.of(file), "the file was there at first and was lost meanwhile", REMEDY);
    }
}
