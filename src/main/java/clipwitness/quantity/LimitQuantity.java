package clipwitness.quantity;

/** What a limit can be set for; {@link #key()} is the name on the sheet and in the results. */
public enum LimitQuantity {
    /** Change of level. */
    LEVEL("level", Unit.DECIBEL, 0.5),
    /** Change of distortion. */
    THD("thd", Unit.DECIBEL, 1),
    /** Change of asymmetry, in points. */
    ASYMMETRY("asymmetry", Unit.PERCENT, 2),
    /** Change of crest factor. */
    CREST_FACTOR("crest-factor", Unit.DECIBEL, 0.3),
    /** Null depth, an upper limit below 0. */
    NULL_DEPTH("null-depth", Unit.DECIBEL, -32),
    /** Increase of noise. */
    NOISE("noise", Unit.DECIBEL, 2),
    /** Increase of hum. */
    HUM("hum", Unit.DECIBEL, 3),
    /** Change of response. */
    RESPONSE("response", Unit.DECIBEL, 0.5),
    /** Deviation of a rail from its expectation. */
    RAIL("rail", Unit.PERCENT, 2);

    private final String key;
    private final Unit unit;
    private final double standard;

    LimitQuantity(String key, Unit unit, double standard) {
        this.key = key;
        this.unit = unit;
        this.standard = standard;
    }

    /** Name on the sheet and in the results. */
    public String key() {
        return key;
    }

    /** Unit of the limit; on the sheet asymmetry may stand without it. */
    public Unit unit() {
        return unit;
    }

    /** Limit where the sheet sets none. */
    public double standard() {
        return standard;
    }
}
