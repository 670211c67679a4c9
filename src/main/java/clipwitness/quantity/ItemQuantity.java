package clipwitness.quantity;

import java.util.Optional;

/** What an item of a comparison is about; {@link #key()} is the name in the results. */
public enum ItemQuantity {
    /** Change of rms level. */
    LEVEL(LimitQuantity.LEVEL),
    /** Change of distortion. */
    THD(LimitQuantity.THD),
    /** Change of asymmetry. */
    ASYMMETRY(LimitQuantity.ASYMMETRY),
    /** Change of crest factor. */
    CREST_FACTOR(LimitQuantity.CREST_FACTOR),
    /** Change of gain at the fundamental. */
    GAIN("gain", Unit.DECIBEL),
    /** Null depth. */
    NULL_DEPTH(LimitQuantity.NULL_DEPTH),
    /** Change of noise. */
    NOISE(LimitQuantity.NOISE),
    /** Change of hum. */
    HUM(LimitQuantity.HUM),
    /** Change of response. */
    RESPONSE(LimitQuantity.RESPONSE),
    /** Deviation of a rail. */
    RAIL(LimitQuantity.RAIL),
    /** Change of phase at the fundamental. */
    POLARITY("polarity", Unit.DEGREE);

    private final String key;
    private final Unit unit;
    private final Optional<LimitQuantity> limit;

    ItemQuantity(LimitQuantity limit) {
        this.key = limit.key();
        this.unit = limit.unit();
        this.limit = Optional.of(limit);
    }

    ItemQuantity(String key, Unit unit) {
        this.key = key;
        this.unit = unit;
        this.limit = Optional.empty();
    }

    /** Name in the results. */
    public String key() {
        return key;
    }

    /** Whether it is of waves, so that its condition is one under which waves were captured. */
    public boolean isOfWaves() {
        return switch (this) {
            case NOISE, HUM, RESPONSE, RAIL -> false;
            default -> true;
        };
    }

    /** Unit of the change. */
    public Unit unit() {
        return unit;
    }

    /** The unit of the change as it is written on paper: a difference of percentages counts in points. */
    public String symbol() {
        return switch (this) {
            case ASYMMETRY -> "points";
            case POLARITY -> "°";
            default -> unit.symbol();
        };
    }

    /** The sheet's limit, where there is one. */
    public Optional<LimitQuantity> limit() {
        return limit;
    }
}
