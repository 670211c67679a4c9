package clipwitness.compare.judge;

import clipwitness.compare.result.LevelSeries;
import clipwitness.compare.result.LevelStep;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.series.CrossingPlace;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Output against input over level steps: dB out a dB in, and the 1 dB compression point, the input level at which the output's
 * fundamental is 1 dB short of the line of slope 1 through the lowest step, by interpolation in dB between the steps ({@link CrossingPlace}).
 */
final class LevelSteps {
    private static final double COMPRESSION_DB = 1;

    private LevelSteps() {}

    /** One step in dB over 1 V, with the standard uncertainty of its gain. */
    private record Step(double inputVolts, double inputDb, Measured output, double outputDb, double uncertaintyDb) {}

    /** Series of one state at one setting of the gain control. */
    static LevelSeries series(List<StateAtCondition> settings) {
        List<Step> steps = settings.stream()
                .flatMap(s -> step(s).stream())
                .sorted(Comparator.comparingDouble(Step::inputDb))
                .toList();
        List<LevelStep> rows = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Step s = steps.get(i);
            Measured slope = i == 0 ? Measured.refused(Unit.ONE, FigureReason.LOWEST_STEP) : slope(steps.get(i - 1), s);
            rows.add(new LevelStep(s.inputVolts, s.output, slope));
        }
        return new LevelSeries(settings.get(0).condition().gainPercent(), rows, compressionPoint(steps));
    }

    private static Optional<Step> step(StateAtCondition setting) {
        Measured output = setting.figure(WaveformQuantity.FUNDAMENTAL);
        double input = setting.figure(WaveformQuantity.INPUT_FUNDAMENTAL)
                .value()
                .orElse(setting.condition().level().orElseThrow());
        return output.asValue()
                .filter(v -> v.number() > 0 && input > 0)
                .map(v -> v.without(Source.VERTICAL_ACCURACY)) // all steps are taken at one scale
                .map(v -> new Step(
                        input,
                        Decibels.ofAmplitude(input),
                        v,
                        Decibels.ofAmplitude(v.number()),
                        Decibels.PER_RELATIVE_AMPLITUDE * v.standardUncertainty() / v.number()));
    }

    private static Measured slope(Step below, Step above) {
        double in = above.inputDb - below.inputDb;
        return in > 0
                ? Measured.withNoise(
                        (above.outputDb - below.outputDb) / in,
                        Unit.ONE,
                        Math.hypot(above.uncertaintyDb, below.uncertaintyDb) / in)
                : Measured.refused(Unit.ONE, FigureReason.SAME_INPUT_LEVEL);
    }

    private static Measured compressionPoint(List<Step> steps) {
        double[] inputs = steps.stream().mapToDouble(Step::inputDb).toArray();
        double[] shortfalls = IntStream.range(0, steps.size())
                .mapToDouble(i -> shortfall(steps, i))
                .toArray();
        boolean rises = IntStream.range(1, steps.size()).allMatch(i -> inputs[i] > inputs[i - 1]);
        return steps.size() < 2 || !rises
                ? Measured.refused(Unit.VOLT, FigureReason.NOT_REACHED)
                : CrossingPlace.of(inputs, shortfalls, COMPRESSION_DB)
                        .map(place -> crossing(steps, place, shortfalls))
                        .orElse(Measured.refused(Unit.VOLT, FigureReason.NOT_REACHED));
    }

    private static Measured crossing(List<Step> steps, CrossingPlace place, double[] shortfalls) {
        int above = place.above();
        double width = steps.get(above).inputDb - steps.get(above - 1).inputDb;
        double input = Decibels.toAmplitude(place.at());
        double perDecibel = input / Decibels.PER_RELATIVE_AMPLITUDE;
        double noise = Math.hypot(steps.get(above).uncertaintyDb, steps.get(0).uncertaintyDb);
        return Measured.of(
                input,
                Unit.VOLT,
                new Contribution(
                        Source.NOISE, perDecibel * width / (shortfalls[above] - shortfalls[above - 1]) * noise),
                new Contribution(Source.METHOD, perDecibel * place.bound() / Math.sqrt(3)));
    }

    private static double shortfall(List<Step> steps, int i) {
        Step lowest = steps.get(0);
        Step s = steps.get(i);
        return s.inputDb - lowest.inputDb - (s.outputDb - lowest.outputDb);
    }
}
