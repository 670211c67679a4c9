package clipwitness.reading;

/** Told how far the reading of exports has come. Calls may come from several threads. */
public interface Progress {
    /** Ignores what it is told. */
    Progress NONE = new Progress() {
        @Override
        public void expect(long bytes) {
            // nobody waits
        }

        @Override
        public void advance(long bytes) {
            // nobody waits
        }
    };

    /**
     * More is to be read.
     *
     * @param bytes size of what comes on top of what was expected so far, 0 or more
     */
    void expect(long bytes);

    /**
     * More has been read.
     *
     * @param bytes how much since the call before, 0 or more
     */
    void advance(long bytes);
}
