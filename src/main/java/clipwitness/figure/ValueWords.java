package clipwitness.figure;

import clipwitness.compare.finding.Told;
import clipwitness.measure.Measured;
import clipwitness.quantity.NumberParts;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import clipwitness.words.Speech;

/**
 * Measured values as text for a figure's sentence: to the digits that their uncertainty leaves, at most three, levels to at most
 * two decimals.
 *
 * @param speech words and numbers of the report
 */
record ValueWords(Speech speech) {
    private static final int MOST_DIGITS = 3;
    private static final int MOST_DECIMALS = 2;

    /** A value with its unit; of a bound, what it lies below. */
    String of(Measured.Value value) {
        String text = text(value.shown(), value);
        return value.isUpperBound() ? speech.say("amount.below", "amount", text) : text;
    }

    /** A change with its sign, in a unit that is called by this symbol. */
    String change(Measured.Value value, String symbol) {
        String number = speech.numbers().signed(value.number(), Unit.ONE, decimals(value));
        return new NumberParts(number, "", symbol).text();
    }

    /** The size of a change, without sign. */
    String size(Measured.Value value) {
        return text(Math.abs(value.number()), value);
    }

    /** What a change is at least, in whole units, without sign. */
    String least(Measured.Value value) {
        return speech.numbers().fixed(Told.least(Math.abs(value.number()), value.expanded()), value.unit(), 0);
    }

    private String text(double number, Measured.Value value) {
        boolean level = value.unit() == Unit.DECIBEL || value.unit() == Unit.DBC;
        double u = value.expanded();
        if (level || number == 0) {
            return speech.numbers().fixed(number, value.unit(), decimals(value));
        }
        return speech.numbers().rounded(number, value.unit(), NumberText.digits(number, u, MOST_DIGITS));
    }

    private static int decimals(Measured.Value value) {
        return NumberText.decimals(value.expanded(), MOST_DECIMALS);
    }
}
