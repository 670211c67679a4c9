package clipwitness.job;

/** Paper of the report. */
public enum Paper {
    /** 210 mm by 297 mm. */
    A4,
    /** 8.5 in by 11 in. */
    LETTER
}
