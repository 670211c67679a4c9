package clipwitness.fault;

/** What happened to an input between its first and its last reading. */
public final class Meanwhile {
    private static final String REMEDY = "Leave the folder alone while the program reads it, then run it again";

    private Meanwhile() {}

    /** Its content was changed, or another file took its name. */
    public static Problem changed(String file) {
        return new Problem(
                ErrorCode.CHANGED_MEANWHILE, Origin.of(file), "the file was changed while it was read", REMEDY);
    }

    /** It no longer exists, or can no longer be read. */
    public static Problem lost(String file) {
        return new Problem(
                ErrorCode.CHANGED_MEANWHILE,
                Origin.of(file),
                "the file was there at first and was lost meanwhile",
                REMEDY);
    }
}
