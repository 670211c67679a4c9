package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.ExportFacts;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemQuantity;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.LevelSeries;
import clipwitness.compare.result.LevelStep;
import clipwitness.compare.result.Series;
import clipwitness.compare.result.SeriesPoint;
import clipwitness.job.Attachment;
import clipwitness.job.Bench;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.job.Job;
import clipwitness.job.JobSheet;
import clipwitness.job.Limits;
import clipwitness.job.Paper;
import clipwitness.job.ReportInfo;
import clipwitness.job.Role;
import clipwitness.job.Shop;
import clipwitness.job.State;
import clipwitness.job.Stimulus;
import clipwitness.job.UnitUnderTest;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** Results of invented jobs, built by hand. */
final class DemoJob {
    private final List<State> states = new ArrayList<>();
    private double[] gains = {0, 25, 50, 75, 100};
    private boolean hasInput = true;
    private int bins = 500;
    private boolean secondCondition;
    private boolean isEdgy;
    private boolean isApart;
    private double[] stepGains = {};

    private DemoJob() {}

    /** As received, put back, and with new clippers; five settings; input and output. */
    static DemoJob usual() {
        return new DemoJob()
                .state("received", "As received", Role.BEFORE)
                .state("original", "After, original clippers", Role.UNCHANGED)
                .state("new", "After, new clippers", Role.CHANGED);
    }

    /** A job whose states are given one by one. */
    static DemoJob empty() {
        return new DemoJob();
    }

    DemoJob state(String name, String label, Role role) {
        Optional<String> against = role == Role.BEFORE || role == Role.SHOWN
                ? Optional.empty()
                : Optional.of(states.get(0).name());
        states.add(new State(name, label, role, against, List.of()));
        return this;
    }

    DemoJob gains(double... percent) {
        gains = percent.clone();
        return this;
    }

    DemoJob withoutInput() {
        hasInput = false;
        return this;
    }

    DemoJob bins(int perCycle) {
        bins = perCycle;
        return this;
    }

    DemoJob withSecondCondition() {
        secondCondition = true;
        return this;
    }

    /** Level steps at some settings of the gain control. */
    DemoJob levelSteps(double... percent) {
        stepGains = percent.clone();
        return this;
    }

    /** Every state clips at a level of its own. */
    DemoJob apart() {
        isApart = true;
        return this;
    }

    /** Refusals and items that fail, stay open, or lie far outside. */
    DemoJob edgy() {
        isEdgy = true;
        return this;
    }

    JobResults results() {
        Job job = new Job(Path.of("demo"), sheet(), List.of());
        List<CaptureResult> captures = new ArrayList<>();
        List<Series> series = new ArrayList<>();
        for (double frequency : secondCondition ? new double[] {1000, 200} : new double[] {1000}) {
            for (int s = 0; s < states.size(); s++) {
                List<SeriesPoint> points = new ArrayList<>();
                for (double gain : gains) {
                    if (frequency == 1000 || gain <= 50) {
                        WaveformResult wave = wave(s, gain);
                        captures.add(capture(states.get(s), condition(gain, frequency), wave));
                        points.add(new SeriesPoint(gain, wave.values()));
                    }
                }
                Condition open = condition(0, frequency).withoutGain();
                series.add(new Series(states.get(s).name(), open, points, List.of(), levels(s, frequency)));
            }
        }
        return new JobResults(job, "0".repeat(64), captures, series, comparisons(), List.of());
    }

    private List<LevelSeries> levels(int state, double frequency) {
        List<LevelSeries> levels = new ArrayList<>();
        for (double gain : frequency == 1000 ? stepGains : new double[] {}) {
            List<LevelStep> steps = new ArrayList<>();
            for (double input = 0.01; input < 0.5; input *= 2) {
                double output = (10 + gain / 10) * input / (1 + (2 + state) * input);
                steps.add(new LevelStep(
                        input,
                        Measured.withNoise(output, Unit.VOLT, 0.01 * output),
                        Measured.refused(Unit.ONE, "not asked for")));
            }
            levels.add(new LevelSeries(
                    OptionalDouble.of(gain),
                    steps,
                    state == 2
                            ? Measured.refused(Unit.VOLT, "not reached")
                            : Measured.withNoise(0.0623, Unit.VOLT, 0.001)));
        }
        return levels;
    }

    private WaveformResult wave(int state, double gain) {
        double amplification = 0.8 * Math.pow(10, gain / 100 * 1.6);
        boolean isChanged = states.get(state).role() == Role.CHANGED;
        double clip = (isChanged ? 0.22 : 0.5) * (1 + (isApart ? -0.28 : 0.004) * state);
        return new DemoWave(amplification, clip, isChanged ? clip * 2 : clip * 1.02, hasInput, bins).result();
    }

    private static Condition condition(double gain, double frequency) {
        return new Condition(
                OptionalDouble.of(gain), OptionalDouble.of(frequency), OptionalDouble.of(0.1), Optional.empty());
    }

    private static CaptureResult capture(State state, Condition condition, WaveformResult wave) {
        CaptureRow row = new CaptureRow(
                2,
                "captures/a.csv",
                Optional.of(state.name()),
                CaptureKind.WAVEFORM,
                condition,
                1,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                1,
                1,
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
        return new CaptureResult(
                row,
                new ExportFacts(
                        "0".repeat(64),
                        Optional.empty(),
                        "CH2",
                        Optional.empty(),
                        12_000,
                        OptionalDouble.of(1e6),
                        List.of("CH1", "CH2"),
                        List.of()),
                List.of(),
                Optional.of(wave),
                Optional.empty());
    }

    private List<Comparison> comparisons() {
        List<Comparison> comparisons = new ArrayList<>();
        for (State state : states) {
            state.against().ifPresent(from -> comparisons.add(comparison(from, state)));
        }
        return comparisons;
    }

    private Comparison comparison(String from, State to) {
        boolean judged = to.role() == Role.UNCHANGED;
        List<Item> items = new ArrayList<>();
        for (int g = 0; g < gains.length; g++) {
            Condition at = condition(gains[g], 1000);
            double shift = judged ? 0.05 * (g - 2) : -1.5 * g;
            items.add(item(ItemQuantity.LEVEL, at, shift, 0.11, 0.5, judged));
            items.add(item(ItemQuantity.THD, at, isEdgy && g == 1 ? 4.6 : shift * 2, 0.2, 1, judged));
            items.add(item(ItemQuantity.ASYMMETRY, at, isEdgy && g == 2 ? 1.8 : shift * 3, 0.6, 2, judged));
            items.add(item(ItemQuantity.CREST_FACTOR, at, shift / 2, 0.08, 0.3, judged));
            items.add(item(ItemQuantity.NULL_DEPTH, at, judged ? -46 + 2 * g : -12 - g, 1.2, -32, judged));
        }
        if (isEdgy && judged) {
            items.set(
                    0,
                    new Item(
                            ItemQuantity.LEVEL,
                            condition(gains[0], 1000),
                            Measured.refused(Unit.DECIBEL, "the capture is over range"),
                            OptionalDouble.of(0.5),
                            Decision.UNDECIDED,
                            OptionalDouble.empty(),
                            Optional.empty()));
        }
        return new Comparison(
                from,
                to.name(),
                judged ? Intent.UNCHANGED : Intent.CHANGED,
                judged ? Decision.PASS : Decision.DESCRIBED,
                Optional.empty(),
                List.of(),
                List.of(),
                items,
                List.of(),
                List.of());
    }

    private static Item item(
            ItemQuantity quantity, Condition at, double change, double u, double limit, boolean judged) {
        double size = limit < 0 ? change : Math.abs(change);
        Decision decision = size + u <= limit ? Decision.PASS : size - u > limit ? Decision.FAIL : Decision.UNDECIDED;
        return new Item(
                quantity,
                at,
                Measured.withNoise(change, quantity.unit(), u / 2),
                OptionalDouble.of(limit),
                judged ? decision : Decision.DESCRIBED,
                OptionalDouble.empty(),
                Optional.empty());
    }

    private JobSheet sheet() {
        Map<String, String> settings = new LinkedHashMap<>();
        return new JobSheet(
                new ReportInfo(
                        "DEMO-1",
                        "Invented job",
                        LocalDate.of(2026, 1, 1),
                        Optional.empty(),
                        OptionalInt.empty(),
                        Optional.empty(),
                        "bench",
                        "en",
                        Paper.A4,
                        Set.of(Attachment.RESULTS)),
                new Shop("", "", Optional.empty(), ""),
                "",
                new UnitUnderTest("invented overdrive", "", "", "9 V"),
                "",
                new Bench(
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        List.of(),
                        0.03,
                        0.01,
                        0.005),
                new Stimulus("sine", OptionalDouble.of(1000), OptionalDouble.of(0.1)),
                settings,
                states,
                new Limits(Map.of()),
                List.of(),
                Optional.empty(),
                List.of());
    }
}
