package clipwitness.compare.noise;

import clipwitness.capture.Condition;
import clipwitness.capture.VerticalRange;
import clipwitness.compare.judge.Replicates;
import clipwitness.compare.result.CaptureResult;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.noise.Band;
import clipwitness.measure.noise.HumLine;
import clipwitness.measure.noise.MainsHum;
import clipwitness.measure.noise.NoiseFigure;
import clipwitness.measure.noise.NoiseResult;
import clipwitness.measure.wave.NoisyPower;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One state under one condition: its captures of noise, replicates together.
 *
 * @param state      state
 * @param label      the state's label, for sentences
 * @param condition  condition
 * @param replicates captures, at least one
 */
public record NoiseAtCondition(String state, String label, Condition condition, List<CaptureResult> replicates) {
    /** Checks that there is a capture. */
    public NoiseAtCondition {
        replicates = List.copyOf(replicates);
        if (replicates.isEmpty()) {
            throw new IllegalArgumentException("a setting needs a capture");
        }
    }

    private List<NoiseResult> results() {
        return replicates.stream().flatMap(c -> c.noise().stream()).toList();
    }

    /** The first capture whose figures were not refused, else the first. */
    public NoiseResult first() {
        return results().stream()
                .filter(n -> !n.refused())
                .findFirst()
                .orElseGet(() -> results().get(0));
    }

    /** Label as an argument of a statement. */
    public Argument name() {
        return Argument.name(label);
    }

    /** Number of occasions on which the controls were set. */
    public int runs() {
        return (int) replicates.stream().mapToInt(r -> r.row().run()).distinct().count();
    }

    /** Whether the export, or the captures table, says what its values are worth in volts. */
    boolean hasVolts() {
        return replicates.stream().allMatch(CaptureResult::hasVolts);
    }

    /** Band that all captures have in common; empty where all are refused. */
    public Optional<Band> band() {
        return results().stream().flatMap(n -> n.band().stream()).reduce(Band::and);
    }

    /** Range of the instrument. */
    public VerticalRange range() {
        return first().range();
    }

    /** A figure as captured, V, averaged over the replicates that have it. */
    public Measured figure(NoiseFigure figure) {
        return Replicates.mean(
                results().stream().map(n -> n.values().get(figure)).toList());
    }

    /** A figure over a band as a level over 1 V, dB, averaged likewise; the instrument's vertical accuracy left out. */
    Measured level(NoiseFigure figure, Band band) {
        return Replicates.mean(
                results().stream().map(n -> level(n, figure, band)).toList());
    }

    private static Measured level(NoiseResult noise, NoiseFigure figure, Band band) {
        return noise.spectrum()
                .map(s -> decibels(s.of(figure, band)))
                .orElseGet(() -> Measured.refused(
                        Unit.DECIBEL, noise.values().get(figure).reason().orElseThrow()));
    }

    private static Measured decibels(Measured.Value v) {
        return v.number() > 0
                ? new Measured.Value(
                        Decibels.ofAmplitude(v.number()),
                        Unit.DECIBEL,
                        v.budget().stream()
                                .map(c -> c.times(Decibels.PER_RELATIVE_AMPLITUDE / v.number()))
                                .toList(),
                        v.isUpperBound())
                : Measured.refused(Unit.DECIBEL, Reason.of(FigureReason.RECORD_CONSTANT));
    }

    /** Share of the instrument's vertical accuracy in a figure, a ratio. */
    double verticalAccuracy() {
        return figure(NoiseFigure.RMS)
                .asValue()
                .filter(v -> v.number() > 0)
                .map(v -> v.budget().stream()
                                .filter(c -> c.source() == Source.VERTICAL_ACCURACY)
                                .mapToDouble(c -> c.standardUncertainty())
                                .sum()
                        / v.number())
                .orElse(0.0);
    }

    /** Lines of the mains, levels averaged over the replicates in which they stand out. */
    public List<HumLine> hum() {
        return lines().lines().stream().map(this::mean).toList();
    }

    private HumLine mean(HumLine line) {
        List<Measured> levels = results().stream()
                .flatMap(n -> n.hum().get(0).lines().stream())
                .filter(l -> l.order() == line.order())
                .map(HumLine::level)
                .toList();
        return new HumLine(line.order(), line.frequency(), power(Set.of(line.order())), Replicates.mean(levels));
    }

    /** Lines of the first capture. */
    MainsHum lines() {
        return first().hum().get(0);
    }

    /** Power of some lines, mean over the replicates in which lines were looked for; none where there is no such replicate. */
    NoisyPower power(Set<Integer> orders) {
        List<NoisyPower> sums = results().stream()
                .filter(NoiseAtCondition::hasLines)
                .map(n -> n.hum().get(0).lines().stream()
                        .filter(l -> orders.contains(l.order()))
                        .map(HumLine::square)
                        .reduce(NoisyPower.ZERO, NoisyPower::plus))
                .toList();
        return sums.isEmpty()
                ? NoisyPower.ZERO
                : sums.stream().reduce(NoisyPower.ZERO, NoisyPower::plus).times(1.0 / sums.size());
    }

    private static boolean hasLines(NoiseResult noise) {
        return noise.hum().get(0).lines().stream()
                .anyMatch(l -> l.stands() || l.square().largestNoise() > 0);
    }

    /** Why there is no hum, in any of the captures: too short, or refused; empty where lines were looked for. */
    Optional<Reason> humRefused() {
        return results().stream().anyMatch(NoiseAtCondition::hasLines)
                ? Optional.empty()
                : lines().lines().stream()
                        .flatMap(l -> l.level().reason().stream())
                        .findFirst();
    }

    /** Whether both settings have the same export. */
    boolean sharesExport(NoiseAtCondition other) {
        return replicates.stream().anyMatch(c -> other.replicates.stream().anyMatch(c::isOfSameExport));
    }
}
