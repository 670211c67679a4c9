package clipwitness.compare;

import clipwitness.job.State;
import clipwitness.measure.WaveformQuantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The wave is not the one that the traced devices make: at the highest gain, and at the next one where it clips too, a clip level (a
 * peak where there is no input channel) differs from its prediction by more than one and a half times the uncertainty of the
 * difference and by more than 5 %, in the same direction at both.
 */
final class LegMismatch implements HintRule {
    private static final String CODE = "leg-mismatch";
    private static final String LOWER = "the lower";
    private static final double BEYOND = 1.5;
    private static final double LEAST = 0.05;

    @Override
    public List<Hint> look(Evidence evidence) {
        List<Hint> hints = new ArrayList<>();
        for (State state : evidence.job().sheet().states()) {
            List<StatePrediction> clipped = evidence.devices().predictions().stream()
                    .filter(p -> p.state().equals(state.name()) && isClipped(evidence, p))
                    .sorted(Comparator.comparingDouble(LegMismatch::gain).reversed())
                    .limit(2)
                    .toList();
            for (WaveformQuantity[] half : halves(clipped)) {
                hint(state, clipped, half[0], half[1]).ifPresent(hints::add);
            }
        }
        return hints;
    }

    private static List<WaveformQuantity[]> halves(List<StatePrediction> clipped) {
        boolean hasInput = clipped.stream()
                .allMatch(p -> p.figure(WaveformQuantity.CLIP_UP.key())
                        .flatMap(Prediction::agrees)
                        .isPresent());
        WaveformQuantity up = hasInput ? WaveformQuantity.CLIP_UP : WaveformQuantity.PEAK_UP;
        WaveformQuantity down = hasInput ? WaveformQuantity.CLIP_DOWN : WaveformQuantity.PEAK_DOWN;
        return List.of(new WaveformQuantity[] {up, down}, new WaveformQuantity[] {down, up});
    }

    private static boolean isClipped(Evidence evidence, StatePrediction prediction) {
        return evidence.catalogue()
                .at(prediction.state(), prediction.condition())
                .filter(Setting::isClipped)
                .isPresent();
    }

    private static double gain(StatePrediction prediction) {
        return prediction.condition().gainPercent().orElse(0);
    }

    private static Optional<Hint> hint(
            State state, List<StatePrediction> clipped, WaveformQuantity half, WaveformQuantity other) {
        List<Double> excess = clipped.stream().map(p -> excess(p, half)).toList();
        boolean higher = !excess.isEmpty() && excess.stream().allMatch(e -> e > 0);
        boolean lower = !excess.isEmpty() && excess.stream().allMatch(e -> e < 0);
        if (!higher && !lower) {
            return Optional.empty();
        }
        boolean otherToo = clipped.stream().allMatch(p -> excess(p, other) != 0);
        if (otherToo && side(half).equals(LOWER)) {
            return Optional.empty(); // said with the upper half
        }
        Prediction figure = clipped.get(0).figure(half.key()).orElseThrow();
        return Optional.of(new Hint(
                CODE,
                Optional.of(state.name()),
                "In “" + state.label() + "” " + (otherToo ? "the wave clips" : side(half) + " half clips")
                        + (higher ? " higher" : " lower") + " than the traced devices make it: "
                        + causes(otherToo, higher),
                String.format(
                        Locale.ROOT,
                        "%s at %.0f %% gain is %.3f V, predicted %.3f V ± %.3f V (%s)",
                        half.key(),
                        gain(clipped.get(0)),
                        figure.measured().value().orElseThrow(),
                        figure.predicted().value().orElseThrow(),
                        figure.expandedUncertainty().orElseThrow(),
                        clipped.get(0).source())));
    }

    private static String side(WaveformQuantity half) {
        return half == WaveformQuantity.CLIP_UP || half == WaveformQuantity.PEAK_UP ? "the upper" : LOWER;
    }

    private static String causes(boolean both, boolean higher) {
        if (both) {
            return "look for other devices than the traced ones, another source resistance, or another gain behind the"
                    + " clipper than the sheet states.";
        }
        return higher
                ? "look for an open leg, a device the wrong way round, or other devices than the traced ones in this leg."
                : "look for a shorted device or switch, or other devices than the traced ones in this leg.";
    }

    /** By how much the measured figure exceeds the predicted one, as a share; 0 where that says nothing. */
    private static double excess(StatePrediction prediction, WaveformQuantity quantity) {
        Optional<Prediction> figure = prediction.figure(quantity.key());
        if (figure.isEmpty() || figure.get().difference().isEmpty()) {
            return 0;
        }
        double difference = -figure.get().difference().getAsDouble();
        double predicted = figure.get().predicted().value().orElseThrow();
        boolean beyond = Math.abs(difference)
                        > BEYOND * figure.get().expandedUncertainty().orElseThrow()
                && Math.abs(difference) > LEAST * Math.abs(predicted);
        return beyond ? difference / Math.abs(predicted) : 0;
    }
}
