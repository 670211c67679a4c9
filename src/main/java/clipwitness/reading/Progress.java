package clipwitness.reading;

/** Told how far the reading of one file has come. */
@FunctionalInterface
public interface Progress {
    /** Tells nobody. */
    Progress NONE = bytes -> {};

    /**
     * So much has been read, in order from the start.
     *
     * @param bytes number of bytes, rising from call to call, the file's size at most
     */
    void at(long bytes);
}
