package clipwitness.job;

/** Paper of the report. */
public enum Paper {
    /** 210 mm by 297 mm. */
    A4("A4"),
    /** 8.5 in by 11 in. */
    LETTER("Letter");

    private final String code;

    Paper(String code) {
        this.code = code;
    }

    /** Name on the job sheet. */
    public String code() {
        return code;
    }
}
