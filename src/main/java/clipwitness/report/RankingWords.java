package clipwitness.report;

import clipwitness.compare.ClipForecast;
import clipwitness.measure.Measured;
import clipwitness.measure.junction.MatchedPair;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import java.util.Optional;

/** A ranking's figures in words, for the terminal and for the sheet. */
public final class RankingWords {
    private static final NumberText NUMBERS = NumberText.in("en");
    private static final int DIGITS = 3;
    private static final double SYMMETRIC = 1;

    private RankingWords() {}

    /** A voltage, {@code 2.66 mV}, {@code below 0.4 mV}, or a dash. */
    public static String volts(Measured measured) {
        Optional<Measured.Value> value = measured.asValue();
        if (value.isEmpty()) {
            return "–";
        }
        Measured.Value v = value.get();
        return v.isUpperBound()
                ? "below " + NUMBERS.rounded(v.number() + 2 * v.standardUncertainty(), v.unit(), 2)
                : NUMBERS.rounded(v.number(), v.unit(), DIGITS);
    }

    /** What a pair would clip at: {@code 2.9 dB lower, symmetric to 1 %}. */
    public static String forecast(ClipForecast.Forecast forecast) {
        double change = forecast.levelChange();
        String level = Math.abs(change) < 0.05
                ? "as high"
                : NUMBERS.fixed(Math.abs(change), Unit.DECIBEL, 1) + (change > 0 ? " higher" : " lower");
        double asymmetry = Math.abs(forecast.asymmetry());
        return level
                + (asymmetry <= SYMMETRIC
                        ? ", symmetric to " + NUMBERS.fixed(Math.max(1, Math.ceil(asymmetry)), Unit.PERCENT, 0)
                        : ", asymmetric by " + NUMBERS.fixed(asymmetry, Unit.PERCENT, 1));
    }

    /** A remark on a pair; empty where there is none. */
    public static String remark(MatchedPair pair) {
        return pair.tracedApart()
                ? "traced " + NUMBERS.rounded(pair.temperatureApart(), Unit.KELVIN, 2)
                        + " apart: up to 2 mV a kelvin of the mismatch may be temperature"
                : "";
    }
}
