package clipwitness.compare.device;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.job.Clipper;
import clipwitness.job.Job;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.QuantityFormatException;
import clipwitness.quantity.QuantityParser;
import clipwitness.quantity.Unit;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What shapes a wave and is not on the sheet, so that nothing can be predicted of it: filters, coupling capacitors and slow stages, which open
 * the transfer curve into a loop, and a stage ahead of the clipper that saturates, which the state without clippers shows.
 */
final class PredictionDoubts {
    private static final NumberText NUMBERS = NumberText.in("en");

    /** Largest distance of the branches over the swing, at one place; over the whole curve that is well above 1 %. */
    private static final double MOST_GAP = 0.06;

    /** Distortion without clippers, percent, above which the source is no sine any more. */
    private static final double MOST_THD = 1;

    private final Job job;
    private final Clipper clipper;
    private final Catalogue catalogue;

    PredictionDoubts(Job job, Clipper clipper, Catalogue catalogue) {
        this.job = job;
        this.clipper = clipper;
        this.catalogue = catalogue;
    }

    /** Why nothing can be predicted, a clause; empty where nothing is in the way. */
    Optional<String> of(StateAtCondition setting) {
        return gap(setting).or(() -> saturated(setting));
    }

    /**
     * Why a source of some amplitude is none: it swings beyond the unit's supply, which even a doubled one does not.
     *
     * @param amplitude peak of the source as the gain for small signals or the clipped wave tells it, V
     */
    Optional<String> beyondSupply(double amplitude) {
        OptionalDouble supply = supply();
        return supply.isPresent() && amplitude > supply.getAsDouble()
                ? Optional.of("the source would swing to ± " + NUMBERS.rounded(amplitude, Unit.VOLT, 2)
                        + ", beyond the unit's supply of " + NUMBERS.nominal(supply.getAsDouble(), Unit.VOLT)
                        + ": the stage ahead of the clipper saturates")
                : Optional.empty();
    }

    private OptionalDouble supply() {
        try {
            return OptionalDouble.of(QuantityParser.withUnit(job.sheet().unit().supply(), Unit.VOLT)
                    .quantity()
                    .value());
        } catch (QuantityFormatException e) {
            return OptionalDouble.empty(); // the supply is a free text
        }
    }

    private static Optional<String> gap(StateAtCondition setting) {
        return setting.first()
                .transfer()
                .flatMap(curve -> setting.figure(WaveformQuantity.CLIP_UP)
                        .reason()
                        .or(() -> curve.gap() > MOST_GAP ? Optional.of(loop(curve.gap())) : Optional.empty()));
    }

    private static String loop(double gap) {
        return "the output does not follow the input at each instant (branches up to "
                + NUMBERS.rounded(100 * gap, Unit.PERCENT, 2)
                + " of the swing apart): filters or slow stages shape the wave too";
    }

    private Optional<String> saturated(StateAtCondition setting) {
        return clipper.unclipped()
                .flatMap(state -> catalogue.at(state, setting.condition()))
                .filter(bare -> !bare.first().refused())
                .flatMap(bare -> bare.figure(WaveformQuantity.THD).asValue())
                .filter(thd -> thd.number() - 2 * thd.standardUncertainty() > MOST_THD)
                .map(thd -> "without clippers the wave is distorted too (" + percent(thd)
                        + " under this condition): the" + " stage ahead of the clipper saturates");
    }

    private static String percent(Measured.Value thd) {
        return NUMBERS.rounded(thd.number(), Unit.PERCENT, 2);
    }
}
