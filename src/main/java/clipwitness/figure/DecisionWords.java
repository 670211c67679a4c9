package clipwitness.figure;

import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.LimitQuantity;

/** Quantities of decisions in words. */
final class DecisionWords {
    private DecisionWords() {}

    /** A quantity as a heading. */
    static String of(ItemQuantity quantity) {
        return switch (quantity) {
            case LEVEL -> "Level";
            case THD -> "Distortion";
            case ASYMMETRY -> "Asymmetry";
            case CREST_FACTOR -> "Crest factor";
            case GAIN -> "Gain";
            case NULL_DEPTH -> "Null depth";
            case NOISE -> "Noise";
            case HUM -> "Hum";
            case RESPONSE -> "Response";
            case RAIL -> "Rail";
            case POLARITY -> "Polarity";
        };
    }

    /** Whether a limit bounds a change from above only. */
    static boolean isOneSided(LimitQuantity quantity) {
        return switch (quantity) {
            case NULL_DEPTH, NOISE, HUM -> true;
            case LEVEL, THD, ASYMMETRY, CREST_FACTOR, RESPONSE, RAIL -> false;
        };
    }
}
