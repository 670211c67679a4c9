package clipwitness.compare.hint;

import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Hint;
import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.HintCode;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import clipwitness.reason.Word;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The wave is not the one that the traced devices make: at the highest gain, and at the next one where it clips too, a clip level (a
 * peak where there is no input channel) differs from its prediction by more than one and a half times the uncertainty of the
 * difference and by more than 5 %, in the same direction at both.
 */
final class LegMismatch implements HintRule {
    private static final int DIGITS = 3;
    private static final double BEYOND = 1.5;
    private static final double LEAST = 0.05;

    /** One half of the wave: 1 where it clips higher than predicted, -1 where lower, 0 where the figures do not say. */
    private record Half(Word name, Word level, WaveformQuantity quantity, int direction) {
        Argument half() {
            return Argument.word(name);
        }

        Argument word() {
            return Argument.word(direction > 0 ? Word.HIGHER : Word.LOWER);
        }
    }

    @Override
    public List<Hint> look(Evidence evidence) {
        return evidence.job().sheet().states().stream()
                .flatMap(s -> hint(s, clipped(evidence, s)).stream())
                .toList();
    }

    /** Of the settings at which a state clips the two with the highest gain, the highest first. */
    private static List<StatePrediction> clipped(Evidence evidence, State state) {
        return evidence.devices().predictions().stream()
                .filter(p -> p.state().equals(state.name()) && isClipped(evidence, p))
                .sorted(Comparator.comparingDouble((StatePrediction p) ->
                                p.condition().gainPercent().orElse(0))
                        .reversed())
                .limit(2)
                .toList();
    }

    private static boolean isClipped(Evidence evidence, StatePrediction prediction) {
        return evidence.catalogue()
                .at(prediction.state(), prediction.condition())
                .filter(StateAtCondition::isClipped)
                .isPresent();
    }

    private static Optional<Hint> hint(State state, List<StatePrediction> clipped) {
        boolean clip = clipped.stream()
                .allMatch(p -> p.figure(WaveformQuantity.CLIP_UP.key())
                        .flatMap(Prediction::agrees)
                        .isPresent());
        List<Half> off = Stream.of(
                        clip
                                ? half(Word.UPPER_HALF, Word.UPPER_CLIP_LEVEL, clipped, WaveformQuantity.CLIP_UP)
                                : half(Word.UPPER_HALF, Word.UPPER_PEAK, clipped, WaveformQuantity.PEAK_UP),
                        clip
                                ? half(Word.LOWER_HALF, Word.LOWER_CLIP_LEVEL, clipped, WaveformQuantity.CLIP_DOWN)
                                : half(Word.LOWER_HALF, Word.LOWER_PEAK, clipped, WaveformQuantity.PEAK_DOWN))
                .filter(h -> h.direction != 0)
                .toList();
        return off.isEmpty()
                ? Optional.empty()
                : Optional.of(new Hint(
                        HintCode.LEG_MISMATCH,
                        Optional.of(state.name()),
                        finding(Argument.name(state.label()), off),
                        evidence(clipped.get(0), off)));
    }

    private static Half half(Word name, Word level, List<StatePrediction> clipped, WaveformQuantity quantity) {
        List<Integer> directions =
                clipped.stream().map(p -> direction(p, quantity)).distinct().toList();
        return new Half(name, level, quantity, directions.size() == 1 ? directions.get(0) : 0);
    }

    private static int direction(StatePrediction prediction, WaveformQuantity quantity) {
        Optional<Prediction> figure =
                prediction.figure(quantity.key()).filter(f -> f.difference().isPresent());
        if (figure.isEmpty()) {
            return 0;
        }
        double higher = -figure.get().difference().getAsDouble();
        double predicted = figure.get().predicted().value().orElseThrow();
        boolean beyond =
                Math.abs(higher) > BEYOND * figure.get().expandedUncertainty().orElseThrow()
                        && Math.abs(higher) > LEAST * Math.abs(predicted);
        return beyond ? (int) Math.signum(higher) : 0;
    }

    private static Remark finding(Argument state, List<Half> off) {
        Half first = off.get(0);
        if (off.size() == 1) {
            return Remark.of(first.direction > 0 ? HintRemark.LEG_HIGHER : HintRemark.LEG_LOWER, state, first.half());
        }
        Half other = off.get(1);
        return first.direction == other.direction
                ? Remark.of(HintRemark.LEGS_ALIKE, state, first.word())
                : Remark.of(HintRemark.LEGS_APART, state, first.half(), first.word(), other.half(), other.word());
    }

    private static Remark evidence(StatePrediction highest, List<Half> off) {
        Argument place = Evidence.place(highest.condition().gainPercent());
        List<Argument> levels = off.stream()
                .map(h -> level(h, highest.figure(h.quantity.key()).orElseThrow()))
                .toList();
        Remark evidence = levels.size() == 1
                ? Remark.of(HintRemark.LEG_BY, place, levels.get(0))
                : Remark.of(HintRemark.LEGS_BY, place, levels.get(0), levels.get(1));
        return highest.source()
                .map(s -> Remark.of(HintRemark.LEG_BY_SOURCE, Argument.inner(evidence), Argument.inner(s)))
                .orElse(evidence);
    }

    private static Argument level(Half half, Prediction figure) {
        return Argument.word(
                HintRemark.LEG_LEVEL,
                Argument.word(half.level),
                volts(figure.measured()),
                volts(figure.predicted()),
                Argument.prefixed(figure.expandedUncertainty().orElseThrow(), Unit.VOLT, 2));
    }

    private static Argument volts(Measured measured) {
        return Argument.prefixed(measured.value().orElseThrow(), Unit.VOLT, DIGITS);
    }
}
