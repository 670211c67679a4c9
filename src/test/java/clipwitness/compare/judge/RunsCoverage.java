package clipwitness.compare.judge;

import clipwitness.compare.result.CaptureResult;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * How many of the intervals of changes hold the truth, over jobs of two states and five settings whose control is set by eye. The job sheet's word on
 * the knob is itself uncertain: that of a spread that was seen over nine settings, 8 degrees of freedom.
 */
final class RunsCoverage {
    private static final double[] GAINS = {0, 25, 50, 75, 100};
    static final List<ItemValue> FIGURES = List.of(
            ItemValue.LEVEL,
            ItemValue.THD,
            new ItemValue(WaveformQuantity.ASYMMETRY),
            new ItemValue(WaveformQuantity.CREST_FACTOR));
    private static final double SHEET = 0.01;
    private static final int FREEDOM = 8;
    private static final int SEED = 7919;

    private static final int MOST_RUNS = 3;

    private final List<RunPlan> plans;
    private final double drift;
    private final Map<RunPlan, Map<String, IntervalTally>> tallies = new EnumMap<>(RunPlan.class);

    private RunsCoverage(List<RunPlan> plans, double drift) {
        this.plans = plans;
        this.drift = drift;
        plans.forEach(p -> tallies.put(p, new TreeMap<>()));
    }

    /**
     * Examines jobs. Each is captured once, as often as the largest plan wants; the others leave captures out.
     *
     * @param plans how often each setting was captured
     * @param drift standard deviation from run to run of the level, a ratio, that is no knob
     * @param jobs  how many
     * @return of each plan a tally for each figure
     */
    static Map<RunPlan, Map<String, IntervalTally>> of(List<RunPlan> plans, double drift, int jobs) {
        RunsCoverage coverage = new RunsCoverage(plans, drift);
        IntStream.range(0, jobs).parallel().forEach(coverage::examine);
        return coverage.tallies;
    }

    private void examine(int job) {
        Random random = new Random(SEED * (job + 1L));
        KnobWave before = KnobWave.random(random);
        KnobWave after = before.scaled(1 + 0.04 * random.nextGaussian());
        double knob = 100 * SHEET / Math.sqrt(chiSquared(random) / FREEDOM);
        List<CaptureResult> captures = new ArrayList<>();
        for (double gain : GAINS) {
            captures.addAll(captures("a", before, gain, knob, random));
            captures.addAll(captures("b", after, gain, knob, random));
        }
        Map<Double, Map<ItemValue, Double>> truths = new HashMap<>();
        for (double gain : GAINS) {
            truths.put(
                    gain,
                    FIGURES.stream()
                            .collect(Collectors.toMap(f -> f, f -> after.truth(f, gain) - before.truth(f, gain))));
        }
        plans.forEach(plan -> compare(plan, planned(plan, captures, new Random(random.nextLong())), truths));
    }

    /** The captures that a plan takes. */
    private static List<CaptureResult> planned(RunPlan plan, List<CaptureResult> captures, Random random) {
        Map<List<Object>, Integer> runs = new HashMap<>();
        return captures.stream()
                .filter(c -> {
                    String state = c.row().state().orElseThrow();
                    double gain = c.row().condition().gainPercent().orElseThrow();
                    return c.row().run()
                            <= runs.computeIfAbsent(List.of(state, gain), k -> plan.runs(state, gain, random));
                })
                .toList();
    }

    private void compare(RunPlan plan, List<CaptureResult> captures, Map<Double, Map<ItemValue, Double>> truths) {
        Catalogue catalogue = Catalogue.of(captures, s -> s);
        Change change = new Change(
                new Repeatability(catalogue, bench()), new Drift(new TemperatureChange(OptionalDouble.empty(), 1)));
        for (StateAtCondition from : catalogue.of("a")) {
            StateAtCondition to = catalogue.at("b", from.condition()).orElseThrow();
            for (ItemValue figure : FIGURES) {
                if (!figure.equals(ItemValue.THD) || (from.hasThdToJudge() && to.hasThdToJudge())) {
                    double gain = Catalogue.gain(from);
                    add(
                            plan,
                            figure,
                            gain,
                            change.of(from, to, figure),
                            truths.get(gain).get(figure));
                }
            }
        }
    }

    private List<CaptureResult> captures(String state, KnobWave wave, double gain, double knob, Random random) {
        List<CaptureResult> captures = new ArrayList<>();
        for (int run = 1; run <= MOST_RUNS; run++) {
            double error = gain > 0 && gain < 100 ? knob * random.nextGaussian() : 0;
            double seen = 1 + drift * random.nextGaussian();
            captures.add(MadeUpCapture.capture(state)
                    .gain(gain)
                    .run(run)
                    .measured(wave.measured(gain + error, seen, random)));
        }
        return captures;
    }

    private static double chiSquared(Random random) {
        return IntStream.range(0, FREEDOM)
                .mapToDouble(i -> Math.pow(random.nextGaussian(), 2))
                .sum();
    }

    private synchronized void add(RunPlan plan, ItemValue figure, double gain, Measured change, double truth) {
        change.asValue().ifPresent(value -> {
            for (String name : List.of(
                    figure.item().key(), figure.item().key() + " " + (gain % 100 == 0 ? "at the stops" : "between"))) {
                tallies.get(plan)
                        .computeIfAbsent(name, n -> new IntervalTally())
                        .add(value, truth);
            }
        });
    }

    private static clipwitness.job.Bench bench() {
        OptionalDouble none = OptionalDouble.empty();
        return new clipwitness.job.Bench(none, none, none, none, List.of(), 0.03, SHEET, 0.005);
    }
}
