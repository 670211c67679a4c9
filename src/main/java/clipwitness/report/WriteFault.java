package clipwitness.report;

/** What keeps a document from being written, as far as the place itself shows it. */
public enum WriteFault {
    /** The disk has less room than the documents need. */
    FULL,
    /** A document that stands there cannot be replaced: on some systems as long as another program has it open. */
    HELD,
    /** This user may not write there. */
    FORBIDDEN,
    /** Something else, which the system says. */
    OTHER
}
