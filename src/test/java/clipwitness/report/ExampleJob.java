package clipwitness.report;

import clipwitness.capture.Condition;
import clipwitness.capture.Doubt;
import clipwitness.capture.DoubtCode;
import clipwitness.capture.Severity;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.EquivalentGain;
import clipwitness.compare.result.ExportFacts;
import clipwitness.compare.result.Hint;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemQuantity;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.compare.result.NotExamined;
import clipwitness.compare.result.OnsetGain;
import clipwitness.compare.result.Series;
import clipwitness.compare.result.SeriesPoint;
import clipwitness.job.Job;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An invented job with figures that hang together: a bass overdrive whose clippers got an asymmetric option on a switch, three
 * states at five gains. Nothing here was measured.
 */
public final class ExampleJob {
    /** Settings of the gain control, percent. */
    public static final List<Double> GAINS = List.of(0.0, 25.0, 50.0, 75.0, 100.0);

    private static final int HARMONICS = 12;

    private final ExampleSheet sheet;
    private Ending ending = Ending.PASS;

    private ExampleJob(ExampleSheet sheet) {
        this.sheet = sheet;
    }

    /** How the comparison of the unchanged state ends. */
    public enum Ending {
        /** All items pass. */
        PASS,
        /** Levels fail from half gain up. */
        FAIL,
        /** Distortion at half gain stays undecided. */
        UNDECIDED
    }

    /** The job that goes well. */
    public static ExampleJob good() {
        return new ExampleJob(ExampleSheet.plain());
    }

    /** A job with a sheet of its own. */
    public static ExampleJob with(ExampleSheet sheet) {
        return new ExampleJob(sheet);
    }

    /** The same job with another ending. */
    public ExampleJob ending(Ending other) {
        ExampleJob job = new ExampleJob(sheet);
        job.ending = other;
        return job;
    }

    /** The results. */
    public JobResults results() {
        Job job = sheet.job(GAINS);
        List<CaptureResult> captures = new ArrayList<>();
        job.captures().forEach(row -> captures.add(capture(row)));
        return new JobResults(
                job,
                "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08",
                captures,
                job.sheet().states().stream().map(this::series).toList(),
                List.of(unchanged(), changed(), described()),
                ending == Ending.FAIL ? List.of(hint()) : List.of());
    }

    private static Hint hint() {
        return new Hint(
                "leg-mismatch",
                Optional.of("original"),
                "One leg of the clipping pair looks weaker than the other in “After, original clippers”.",
                "clipUp / clipDown grows from 1.02 at 50 % to 1.31 at 100 %");
    }

    private CaptureResult capture(clipwitness.job.CaptureRow row) {
        String state = row.state().orElseThrow();
        double gain = row.condition().gainPercent().orElseThrow();
        List<Doubt> doubts = gain == 0
                ? List.of(new Doubt(
                        DoubtCode.LOW_RESOLUTION, Severity.WARNING, "The swing uses 27 codes of the converter only."))
                : List.of();
        return new CaptureResult(
                row,
                new ExportFacts(
                        "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852"
                                + String.format("%04d", row.row()),
                        Optional.empty(),
                        "CH2",
                        Optional.of("CH1"),
                        12000,
                        OptionalDouble.of(1e6),
                        List.of("CH1", "CH2"),
                        List.of(
                                "comma separated, decimal point",
                                "units in row 2: s, V, V",
                                "1 µs from the time column")),
                doubts,
                Optional.of(ExampleWave.of(state, gain, HARMONICS)),
                Optional.empty());
    }

    private Series series(State state) {
        List<SeriesPoint> points = new ArrayList<>();
        for (double gain : GAINS) {
            points.add(new SeriesPoint(gain, ExampleWave.values(state.name(), gain)));
        }
        boolean isNew = state.name().equals("new");
        List<OnsetGain> onsets = List.of(
                new OnsetGain(
                        1,
                        isNew
                                ? Measured.refused(Unit.PERCENT, "below the lowest setting")
                                : value(18.2, Unit.PERCENT, 1.1)),
                new OnsetGain(3, isNew ? value(21.7, Unit.PERCENT, 1.2) : value(41.3, Unit.PERCENT, 1.4)),
                new OnsetGain(
                        10, isNew ? value(55.1, Unit.PERCENT, 1.5) : Measured.refused(Unit.PERCENT, "not reached")));
        return new Series(state.name(), condition(0).withoutGain(), points, onsets, List.of());
    }

    private Comparison unchanged() {
        List<Item> items = new ArrayList<>();
        for (double gain : GAINS) {
            items.addAll(unchangedItems(gain));
        }
        Decision verdict = Decision.valueOf(ending.name());
        return new Comparison(
                "received",
                "original",
                Intent.UNCHANGED,
                verdict,
                Optional.empty(),
                List.of(
                        ItemQuantity.LEVEL,
                        ItemQuantity.THD,
                        ItemQuantity.ASYMMETRY,
                        ItemQuantity.CREST_FACTOR,
                        ItemQuantity.NULL_DEPTH,
                        ItemQuantity.POLARITY),
                notExamined(),
                items,
                List.of(),
                List.of());
    }

    private List<Item> unchangedItems(double gain) {
        boolean fails = ending == Ending.FAIL && gain >= 50;
        boolean open = ending == Ending.UNDECIDED && gain == 50;
        double u = 0.02 + 0.03 * Math.sin(Math.PI * gain / 100);
        return List.of(
                judged(ItemQuantity.LEVEL, gain, fails ? -1.1 - gain / 200 : 0.0786 - gain / 900, u, fails ? 0 : 1),
                judged(ItemQuantity.THD, gain, open ? 0.93 : 0.21 - gain / 400, open ? 0.22 : 0.04 + u, open ? -1 : 1),
                judged(ItemQuantity.ASYMMETRY, gain, 0.12 + gain / 700, 0.11, 1),
                judged(ItemQuantity.CREST_FACTOR, gain, -0.02, 0.031, 1),
                judged(ItemQuantity.NULL_DEPTH, gain, -41.2 + gain / 30, 0.8, 1),
                judged(ItemQuantity.POLARITY, gain, 0.31, 0.4, 1));
    }

    /** An item with its decision: 1 pass, 0 fail, -1 undecided. */
    private static Item judged(ItemQuantity quantity, double gain, double change, double u, int decision) {
        double limit = quantity.limit().map(l -> l.standard()).orElse(90.0);
        return new Item(
                quantity,
                condition(gain),
                value(change, quantity.unit(), u),
                OptionalDouble.of(limit),
                decision > 0 ? Decision.PASS : decision == 0 ? Decision.FAIL : Decision.UNDECIDED,
                OptionalDouble.of(decision > 0 ? 0.9999 : decision == 0 ? 0.00001 : 0.74),
                decision < 0
                        ? Optional.of("Set the controls anew and capture each state until it has 3 runs: how well the "
                                + "knob is set again is the largest part of the uncertainty.")
                        : Optional.empty());
    }

    private Comparison changed() {
        List<Item> items = new ArrayList<>();
        List<LevelMatchedHarmonic> matched = new ArrayList<>();
        List<EquivalentGain> equal = new ArrayList<>();
        for (double gain : GAINS) {
            items.addAll(differences(gain));
            items.add(judged(ItemQuantity.POLARITY, gain, -0.4, 0.4, 1));
            for (int order = 1; order <= HARMONICS; order++) {
                double change = order == 1 ? 0.04 : order % 2 == 0 ? 14 - order : -0.6 * order;
                matched.add(
                        new LevelMatchedHarmonic(condition(gain), order, value(change, Unit.DECIBEL, 0.05 * order)));
            }
            equal.add(new EquivalentGain(
                    condition(0).withoutGain(),
                    gain,
                    gain == 0
                            ? Measured.refused(Unit.PERCENT, "below the lowest setting")
                            : value(0.62 * gain, Unit.PERCENT, 1.5)));
        }
        return new Comparison(
                "received",
                "new",
                Intent.CHANGED,
                Decision.PASS,
                Optional.empty(),
                List.of(ItemQuantity.POLARITY),
                notExamined(),
                items,
                matched,
                equal);
    }

    private Comparison described() {
        List<Item> items = new ArrayList<>();
        for (double gain : GAINS) {
            items.addAll(differences(gain));
        }
        return new Comparison(
                "original",
                "new",
                Intent.DESCRIBED,
                Decision.DESCRIBED,
                Optional.empty(),
                List.of(),
                List.of(),
                items,
                List.of(),
                List.of());
    }

    private static List<Item> differences(double gain) {
        double drive = gain / 100;
        return List.of(
                shown(ItemQuantity.LEVEL, gain, value(-0.4 - 5.53 * drive, Unit.DECIBEL, 0.07)),
                shown(ItemQuantity.THD, gain, value(9.1 - 6 * drive, Unit.DECIBEL, 0.21)),
                shown(ItemQuantity.ASYMMETRY, gain, value(-4.9 * drive, Unit.PERCENT, 0.13)),
                shown(ItemQuantity.CREST_FACTOR, gain, value(-0.31 * drive, Unit.DECIBEL, 0.03)),
                shown(ItemQuantity.NULL_DEPTH, gain, value(-30 + 14 * drive, Unit.DECIBEL, 0.5)),
                shown(
                        ItemQuantity.GAIN,
                        gain,
                        gain == 0
                                ? Measured.refused(Unit.DECIBEL, "the input of one capture is below its noise")
                                : value(-0.4 - 5.53 * drive, Unit.DECIBEL, 0.07)));
    }

    private static Item shown(ItemQuantity quantity, double gain, Measured change) {
        return new Item(
                quantity,
                condition(gain),
                change,
                OptionalDouble.empty(),
                Decision.DESCRIBED,
                OptionalDouble.empty(),
                Optional.empty());
    }

    private static List<NotExamined> notExamined() {
        return List.of(
                new NotExamined(ItemQuantity.NOISE, "no noise capture"),
                new NotExamined(ItemQuantity.HUM, "no noise capture"),
                new NotExamined(ItemQuantity.RESPONSE, "no response capture"));
    }

    /** A value with an expanded uncertainty that is noise and knob in equal parts. */
    public static Measured value(double value, Unit unit, double expanded) {
        double part = expanded / 2 / Math.sqrt(2);
        return Measured.withNoise(value, unit, part).plus(Source.KNOB, part);
    }

    /** The condition of a setting. */
    public static Condition condition(double gain) {
        return new Condition(
                OptionalDouble.of(gain), OptionalDouble.of(200), OptionalDouble.of(0.1), Optional.of("noon"));
    }
}
