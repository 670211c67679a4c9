package clipwitness.figure;

import clipwitness.compare.ItemQuantity;
import clipwitness.job.LimitQuantity;
import clipwitness.quantity.Unit;

/** Quantities and limits of decisions in words. */
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
            case POLARITY -> "Phase";
        };
    }

    /** Whether a limit bounds a change from above only. */
    static boolean isOneSided(LimitQuantity quantity) {
        return switch (quantity) {
            case NULL_DEPTH, NOISE, HUM -> true;
            case LEVEL, THD, ASYMMETRY, CREST_FACTOR, RESPONSE, RAIL -> false;
        };
    }

    /** A limit with its sides and its unit. */
    static String limit(ItemQuantity quantity, double limit) {
        String number = NumberForms.shortest(limit, 3);
        String unit =
                quantity.unit() == Unit.DEGREE ? "°" : " " + quantity.unit().symbol();
        boolean oneSided = quantity.limit().filter(DecisionWords::isOneSided).isPresent();
        return (oneSided ? "" : "±") + number + unit;
    }
}
