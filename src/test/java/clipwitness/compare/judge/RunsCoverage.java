package clipwitness.compare.judge;

import clipwitness.compare.result.CaptureResult;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
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

    private final RunPlan plan;
    private final double drift;
    private final Map<String, IntervalTally> tallies = new TreeMap<>();

    private RunsCoverage(RunPlan plan, double drift) {
        this.plan = plan;
        this.drift = drift;
    }

    /**
     * Examines jobs.
     *
     * @param plan  how often each setting was captured
     * @param drift standard deviation from run to run of the level, a ratio, that is no knob
     * @param jobs  how many
     * @return a tally for each figure
     */
    static Map<String, IntervalTally> of(RunPlan plan, double drift, int jobs) {
        RunsCoverage coverage = new RunsCoverage(plan, drift);
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
        Catalogue catalogue = Catalogue.of(captures, s -> s);
        Change change = new Change(
                new Repeatability(catalogue, bench()), new Drift(new TemperatureChange(OptionalDouble.empty(), 1)));
        for (StateAtCondition from : catalogue.of("a")) {
            StateAtCondition to = catalogue.at("b", from.condition()).orElseThrow();
            for (ItemValue figure : FIGURES) {
                if (!figure.equals(ItemValue.THD) || (from.hasThdToJudge() && to.hasThdToJudge())) {
                    double gain = Catalogue.gain(from);
                    add(
                            figure,
                            gain,
                            change.of(from, to, figure),
                            after.truth(figure, gain) - before.truth(figure, gain));
                }
            }
        }
    }

    private List<CaptureResult> captures(String state, KnobWave wave, double gain, double knob, Random random) {
        List<CaptureResult> captures = new ArrayList<>();
        for (int run = 1; run <= plan.runs(state, gain, random); run++) {
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

    private synchronized void add(ItemValue figure, double gain, Measured change, double truth) {
        change.asValue().ifPresent(value -> {
            for (String name : List.of(
                    figure.item().key(), figure.item().key() + " " + (gain % 100 == 0 ? "at the stops" : "between"))) {
                tallies.computeIfAbsent(name, n -> new IntervalTally()).add(value, truth);
            }
        });
    }

    private static clipwitness.job.Bench bench() {
        OptionalDouble none = OptionalDouble.empty();
        return new clipwitness.job.Bench(none, none, none, none, List.of(), 0.03, SHEET, 0.005);
    }
}
