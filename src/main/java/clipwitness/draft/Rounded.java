package clipwitness.draft;

import java.math.BigDecimal;
import java.math.MathContext;

/** Measured frequencies and levels as somebody would have set them on a generator. */
final class Rounded {
    /** Generators and scopes agree on a frequency within this. */
    private static final double SAME_FREQUENCY = 2e-3;

    private static final int FEW = 2;
    private static final int MORE = 4;
    private static final double KILO = 1000;

    private Rounded() {}

    /** The frequency with the fewest digits that the measured one can be. */
    static double nearby(double frequency) {
        for (int digits = FEW; digits < MORE; digits++) {
            double rounded = rounded(frequency, digits);
            if (Math.abs(rounded / frequency - 1) < SAME_FREQUENCY) {
                return rounded;
            }
        }
        return rounded(frequency, MORE);
    }

    /** A value to a number of digits. */
    static double rounded(double value, int digits) {
        return new BigDecimal(value).round(new MathContext(digits)).doubleValue();
    }

    /** A frequency for sheet and table: {@code 1 kHz}. */
    static String frequency(double hertz) {
        return hertz >= KILO ? plain(hertz / KILO) + " kHz" : plain(hertz) + " Hz";
    }

    /** A level for sheet and table, to two digits: {@code 75 mV}. */
    static String level(double volts) {
        return volts >= 1 ? plain(rounded(volts, FEW)) + " V" : plain(rounded(KILO * volts, FEW)) + " mV";
    }

    /** A number without exponent and trailing zeros. */
    static String plain(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(MORE + FEW))
                .stripTrailingZeros()
                .toPlainString();
    }
}
