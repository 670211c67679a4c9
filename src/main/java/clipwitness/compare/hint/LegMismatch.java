package clipwitness.compare.hint;

import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Hint;
import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The wave is not the one that the traced devices make: at the highest gain, and at the next one where it clips too, a clip level (a
 * peak where there is no input channel) differs from its prediction by more than one and a half times the uncertainty of the
 * difference and by more than 5 %, in the same direction at both.
 */
final class LegMismatch implements HintRule {
    private static final String CODE = "leg-mismatch";
    private static final NumberText NUMBERS = NumberText.in("en");
    private static final int DIGITS = 3;
    private static final double BEYOND = 1.5;
    private static final double LEAST = 0.05;

    /** One half of the wave: 1 where it clips higher than predicted, -1 where lower, 0 where the figures do not say. */
    private record Half(String name, String level, WaveformQuantity quantity, int direction) {
        String clips() {
            return "the " + name + " half clips " + word();
        }

        String word() {
            return direction > 0 ? "higher" : "lower";
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
                .filter(s -> s.isClipped() && s.first().branchesAgree())
                .isPresent();
    }

    private static Optional<Hint> hint(State state, List<StatePrediction> clipped) {
        boolean clip = clipped.stream()
                .allMatch(p -> p.figure(WaveformQuantity.CLIP_UP.key())
                        .flatMap(Prediction::agrees)
                        .isPresent());
        List<Half> off = Stream.of(
                        half("upper", clipped, clip ? WaveformQuantity.CLIP_UP : WaveformQuantity.PEAK_UP, clip),
                        half("lower", clipped, clip ? WaveformQuantity.CLIP_DOWN : WaveformQuantity.PEAK_DOWN, clip))
                .filter(h -> h.direction != 0)
                .toList();
        return off.isEmpty()
                ? Optional.empty()
                : Optional.of(new Hint(
                        CODE,
                        Optional.of(state.name()),
                        "In “" + state.label() + "” " + finding(off),
                        evidence(clipped.get(0), off)));
    }

    private static Half half(String name, List<StatePrediction> clipped, WaveformQuantity quantity, boolean clip) {
        List<Integer> directions =
                clipped.stream().map(p -> direction(p, quantity)).distinct().toList();
        return new Half(
                name,
                clip ? name + " clip level" : name + " peak",
                quantity,
                directions.size() == 1 ? directions.get(0) : 0);
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

    private static String finding(List<Half> off) {
        Half first = off.get(0);
        if (off.size() == 1) {
            return first.clips() + " than the traced devices make it: "
                    + (first.direction > 0
                            ? "look for an open leg, a device the wrong way round, or other devices than the traced ones in"
                                    + " this leg."
                            : "look for a shorted device or switch, or other devices than the traced ones in this leg.");
        }
        return first.direction == off.get(1).direction
                ? "the wave clips " + first.word() + " than the traced devices make it: look for other devices than the"
                        + " traced ones, another source resistance, or another gain behind the clipper than the sheet states."
                : first.clips() + " and " + off.get(1).clips()
                        + " than the traced devices make it: look for a pair fitted the other way round, or legs named in"
                        + " the other order in the sheet.";
    }

    private static String evidence(StatePrediction highest, List<Half> off) {
        return Evidence.place(highest.condition().gainPercent()) + " "
                + off.stream()
                        .map(h -> level(h, highest.figure(h.quantity.key()).orElseThrow()))
                        .collect(Collectors.joining(" and "))
                + highest.source().map(s -> "; " + s).orElse("");
    }

    private static String level(Half half, Prediction figure) {
        return "the " + half.level + " is " + volts(figure.measured()) + " instead of " + volts(figure.predicted())
                + " (± "
                + NUMBERS.rounded(figure.expandedUncertainty().orElseThrow(), Unit.VOLT, 2) + " on the difference)";
    }

    private static String volts(Measured measured) {
        return NUMBERS.rounded(measured.value().orElseThrow(), Unit.VOLT, DIGITS);
    }
}
