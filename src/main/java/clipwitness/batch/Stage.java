package clipwitness.batch;

/** What is being done for a job. */
public enum Stage {
    /** Finding out whether the inputs are those of a report that stands. */
    CHECKING,
    /** Reading the exports and measuring them. */
    MEASURING,
    /** Comparing the states. */
    COMPARING,
    /** Making the pages. */
    PRINTING,
    /** Writing the files. */
    WRITING
}
