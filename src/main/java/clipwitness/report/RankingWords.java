package clipwitness.report;

import clipwitness.compare.device.ClipForecast;
import clipwitness.compare.finding.Significance;
import clipwitness.measure.Measured;
import clipwitness.measure.junction.Temperature;
import clipwitness.measure.match.MatchedPair;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import clipwitness.reason.Remark;
import clipwitness.report.data.RankedPair;
import clipwitness.report.data.Ranking;
import clipwitness.report.words.Amount;
import clipwitness.words.Speech;
import java.util.List;
import java.util.Optional;

/** A ranking's figures in words, for the terminal and for the sheet. */
public final class RankingWords {
    private static final NumberText NUMBERS = NumberText.in("en");

    private RankingWords() {}

    /** Names of a pair's devices: {@code D1 + D3}. */
    public static String name(RankedPair pair) {
        return String.join(" + ", pair.pair().devices());
    }

    /** A voltage with its expanded uncertainty, {@code 2.66 ± 0.08 mV}, {@code < 0.4 mV}, or a dash. */
    public static String volts(Measured measured) {
        return measured.asValue().isPresent() ? Amount.of(measured, NUMBERS).full() : "–";
    }

    /** What a pair would clip at: {@code 2.90 ± 0.05 dB lower, symmetric within 0.7 %}; empty where it is not known. */
    public static String forecast(Optional<ClipForecast.Forecast> forecast) {
        return forecast.map(f -> level(f.levelChange()) + ", " + symmetry(f.asymmetry()))
                .orElse("");
    }

    private static String level(Measured.Value change) {
        double u = change.expanded();
        return Significance.of(change)
                ? NUMBERS.measured(Math.abs(change.number()), Unit.DECIBEL, u)
                        + (change.number() > 0 ? " higher" : " lower")
                : "as high within " + NUMBERS.rounded(u + Math.abs(change.number()), Unit.DECIBEL, 2);
    }

    private static String symmetry(Measured.Value asymmetry) {
        double u = asymmetry.expanded();
        return Significance.of(asymmetry)
                ? "asymmetric by " + NUMBERS.measured(Math.abs(asymmetry.number()), Unit.PERCENT, u)
                : "symmetric within " + NUMBERS.rounded(u + Math.abs(asymmetry.number()), Unit.PERCENT, 2);
    }

    /** The currents over which a pair's mismatch counts: {@code 3 µA to 10 mA}. */
    public static String range(MatchedPair pair) {
        return NUMBERS.rounded(pair.range().lowest(), Unit.AMPERE, 2) + " to "
                + NUMBERS.rounded(pair.range().highest(), Unit.AMPERE, 2);
    }

    /** A remark on a pair; empty where there is none. */
    public static String remark(MatchedPair pair) {
        return pair.tracedApart()
                ? "traced " + NUMBERS.rounded(pair.temperatureApart(), Unit.KELVIN, 2)
                        + " apart: referred to one temperature, which adds ± "
                        + NUMBERS.rounded(pair.leftByTemperature(), Unit.VOLT, 2) + " of uncertainty to the mismatch"
                : "";
    }

    /** Temperature of the traces with its bound: {@code 21 °C ± 1 K}. */
    public static String temperature(Temperature temperature) {
        double bound = Math.sqrt(3) * temperature.standardUncertainty();
        return NUMBERS.nominal(temperature.celsius(), Unit.CELSIUS) + " ± " + NUMBERS.nominal(bound, Unit.KELVIN);
    }

    /** What the forecasts are against, or why there are none; empty where no job was named. */
    public static String purpose(Ranking ranking) {
        return ranking.purpose()
                .map(p -> p.reference().isEmpty()
                        ? "job " + p.job()
                                + ": nothing is forecast, because its sheet names no clipper, or the pair before"
                                + " was not traced"
                        : "forecast for job " + p.job() + ", against its pair before, "
                                + String.join(" and ", p.reference())
                                + p.source().stream()
                                        .mapToObj(RankingWords::place)
                                        .findFirst()
                                        .orElse(""))
                .orElse("");
    }

    /** What is said of an export on the terminal. */
    public static String said(Remark remark) {
        return Speech.ENGLISH.text(remark);
    }

    private static String place(double source) {
        return ": where the clipper's source is at " + NUMBERS.nominal(source, Unit.VOLT)
                + ", which drives 1 mA through the resistance ahead of the pair, whichever setting of the gain control that is";
    }

    /** Why each device that shows no junction is left. */
    public static List<String> refusals(Ranking ranking) {
        return ranking.devices().stream()
                .flatMap(d -> Speech.ENGLISH.clause(d.result().refusal()).map(r -> d.name() + ": " + r).stream())
                .toList();
    }
}
