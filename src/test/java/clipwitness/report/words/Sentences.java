package clipwitness.report.words;

import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.Series;
import clipwitness.compare.result.SeriesPoint;
import clipwitness.compare.rule.Findings;
import clipwitness.fixture.ExampleJob;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.ComparisonReason;
import clipwitness.reason.Doubt;
import clipwitness.reason.Reason;
import clipwitness.reason.ReasonCode;
import clipwitness.reason.Remark;
import clipwitness.reason.RemedyRemark;
import clipwitness.words.WordBundle;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the tests of sentences share: the program's words, small comparisons, text with plain spaces. */
final class Sentences {
    private Sentences() {}

    static WordBundle words() {
        return WordBundle.builtIn();
    }

    static JobWording wording(JobResults results) {
        return new JobWording(words(), results);
    }

    /** The first five paragraphs of findings, each with its lead. */
    static List<String> told(JobResults results) {
        FindingText text = new FindingText(wording(results));
        return Findings.of(results).paragraphs().stream()
                .limit(5)
                .map(text::led)
                .map(led -> plain(led.lead().isEmpty() ? led.text() : led.lead() + " " + led.text()))
                .toList();
    }

    /** The good example with other comparisons. */
    static JobResults with(Comparison... comparisons) {
        JobResults good = ExampleJob.good().results();
        return new JobResults(
                good.job(), good.inputsDigest(), good.captures(), good.series(), List.of(comparisons), List.of());
    }

    /** The good example as if one setting of the gain control alone had been captured. */
    static JobResults only(double gain) {
        JobResults good = ExampleJob.good().results();
        return new JobResults(
                good.job(),
                good.inputsDigest(),
                good.captures().stream()
                        .filter(c -> c.row().condition().gainPercent().orElse(-1) == gain)
                        .toList(),
                good.series(),
                good.comparisons().stream().map(c -> only(c, gain)).toList(),
                List.of());
    }

    private static Comparison only(Comparison c, double gain) {
        return new Comparison(
                c.from(),
                c.to(),
                c.intent(),
                c.verdict(),
                c.reason(),
                c.judged(),
                c.notExamined(),
                c.items().stream()
                        .filter(i -> i.condition().gainPercent().orElse(-1) == gain)
                        .toList(),
                c.levelMatched().stream()
                        .filter(h -> h.condition().gainPercent().orElse(-1) == gain)
                        .toList(),
                List.of());
    }

    /** The good example with other series. */
    static JobResults with(List<Series> series) {
        JobResults good = ExampleJob.good().results();
        return new JobResults(good.job(), good.inputsDigest(), good.captures(), series, good.comparisons(), List.of());
    }

    /** The good example with another figure of a state at one setting. */
    static JobResults withFigure(
            JobResults results, String state, double gain, WaveformQuantity quantity, Measured figure) {
        List<Series> series = results.series().stream()
                .map(s -> s.state().equals(state) ? with(s, gain, quantity, figure) : s)
                .toList();
        return new JobResults(
                results.job(), results.inputsDigest(), results.captures(), series, results.comparisons(), List.of());
    }

    private static Series with(Series series, double gain, WaveformQuantity quantity, Measured figure) {
        List<SeriesPoint> points = series.points().stream()
                .map(p -> {
                    Map<WaveformQuantity, Measured> values = new EnumMap<>(p.values());
                    if (p.gainPercent() == gain) {
                        values.put(quantity, figure);
                    }
                    return new SeriesPoint(p.gainPercent(), values);
                })
                .toList();
        return new Series(series.state(), series.condition(), points, series.onsetGain(), series.levelSeries());
    }

    /** The results with a doubt about the captures of a state. */
    static JobResults withDoubt(JobResults results, String state, Doubt doubt) {
        List<CaptureResult> captures = results.captures().stream()
                .map(c -> c.row().state().filter(state::equals).isPresent() ? with(c, doubt) : c)
                .toList();
        return new JobResults(
                results.job(), results.inputsDigest(), captures, results.series(), results.comparisons(), List.of());
    }

    static CaptureResult with(CaptureResult capture, Doubt doubt) {
        return capture.withDoubts(List.of(doubt));
    }

    static Measured bound(double value, Unit unit, double expanded) {
        return ((Measured.Value) ExampleJob.value(value, unit, expanded)).asUpperBound();
    }

    static Comparison comparison(String to, Intent intent, Decision verdict, Item... items) {
        return new Comparison(
                "received",
                to,
                intent,
                verdict,
                items.length == 0 ? Optional.of(Reason.of(ComparisonReason.NO_COMMON_WAVEFORM)) : Optional.empty(),
                List.of(ItemQuantity.POLARITY),
                List.of(),
                List.of(items),
                List.of(),
                List.of());
    }

    static Item item(ItemQuantity quantity, double gain, double change, double expanded, Decision decision) {
        return item(quantity, gain, ExampleJob.value(change, quantity.unit(), expanded), decision);
    }

    static Item refused(ItemQuantity quantity, double gain, ReasonCode reason, Decision decision) {
        return item(quantity, gain, Measured.refused(Unit.DECIBEL, reason), decision);
    }

    static Item item(ItemQuantity quantity, double gain, Measured change, Decision decision) {
        boolean judged = decision != Decision.DESCRIBED;
        return new Item(
                quantity,
                ExampleJob.condition(gain),
                change,
                judged
                        ? OptionalDouble.of(
                                quantity.limit().map(l -> l.standard()).orElse(90.0))
                        : OptionalDouble.empty(),
                decision,
                OptionalDouble.empty(),
                decision == Decision.UNDECIDED ? Optional.of(Remark.of(RemedyRemark.ON_THE_LIMIT)) : Optional.empty());
    }

    static String plain(String text) {
        return text.replace('\u00A0', ' ');
    }
}
