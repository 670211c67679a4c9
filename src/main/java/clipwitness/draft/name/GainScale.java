package clipwitness.draft.name;

import java.util.Collection;
import java.util.Optional;

/** What bare numbers of a gain control mean, decided over all names of a folder together. */
enum GainScale {
    /** Percent of the rotation. */
    PERCENT(1),
    /** A dial from 0 to 10. */
    TEN(10),
    /** A fraction of the rotation. */
    ONE(100),
    /** The numbers do not say. */
    UNKNOWN(Double.NaN);

    private static final double WHOLE = 100;
    private static final double DIAL = 10;
    /** Where a control usually begins, hours before noon, and how many hours it turns. */
    private static final double FIRST_HOUR = 7;

    private static final double HOURS = 10;
    private static final double FACE = 12;

    private final double percent;

    GainScale(double percent) {
        this.percent = percent;
    }

    /** The scale of the bare numbers among these. */
    static GainScale of(Collection<GainText> texts) {
        double greatest = 0;
        boolean broken = false;
        for (GainText text : texts) {
            if (text.form() == GainText.Form.BARE) {
                greatest = Math.max(greatest, text.number());
                broken |= text.number() != Math.rint(text.number());
            }
        }
        if (greatest > DIAL) {
            return PERCENT;
        }
        if (greatest == DIAL) {
            return TEN;
        }
        return greatest <= 1 && broken ? ONE : greatest == 0 ? PERCENT : UNKNOWN;
    }

    /** The position in percent of the rotation; empty where it cannot be told or is none. */
    Optional<Double> percent(GainText text) {
        double value = switch (text.form()) {
            case PERCENT -> text.number();
            case FRACTION -> WHOLE * text.number();
            case BARE -> percent * text.number();
            case CLOCK -> WHOLE * ((text.number() - FIRST_HOUR + FACE) % FACE) / HOURS;
        };
        double rounded = Math.rint(value * WHOLE) / WHOLE;
        return rounded >= 0 && rounded <= WHOLE ? Optional.of(rounded) : Optional.empty();
    }
}
