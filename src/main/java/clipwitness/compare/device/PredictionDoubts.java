package clipwitness.compare.device;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.job.Clipper;
import clipwitness.job.Job;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.QuantityFormatException;
import clipwitness.quantity.QuantityParser;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.Reason;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What shapes a wave and is not on the sheet, so that nothing can be predicted of it: filters, coupling capacitors and slow stages, which open
 * the transfer curve into a loop, and a stage ahead of the clipper that saturates, which the state without clippers shows.
 */
final class PredictionDoubts {
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

    /** Why nothing can be predicted; empty where nothing is in the way. */
    Optional<Reason> of(StateAtCondition setting) {
        return gap(setting).or(() -> saturated(setting));
    }

    /**
     * Why a source of some amplitude is none: it swings beyond the unit's supply, which even a doubled one does not.
     *
     * @param amplitude peak of the source as the gain for small signals or the clipped wave tells it, V
     */
    Optional<Reason> beyondSupply(double amplitude) {
        OptionalDouble supply = supply();
        return supply.isPresent() && amplitude > supply.getAsDouble()
                ? Optional.of(Reason.of(
                        DeviceReason.SOURCE_BEYOND_SUPPLY,
                        Argument.prefixed(amplitude, Unit.VOLT, 2),
                        Argument.prefixed(supply.getAsDouble(), Unit.VOLT, 2)))
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

    /** A curve that is none has no clip levels either (measurement book, section 2): one rule says when, for figures and predictions. */
    private static Optional<Reason> gap(StateAtCondition setting) {
        return setting.first()
                .transfer()
                .flatMap(curve -> setting.figure(WaveformQuantity.CLIP_UP).reason());
    }

    private Optional<Reason> saturated(StateAtCondition setting) {
        return clipper.unclipped()
                .flatMap(state -> catalogue.at(state, setting.condition()))
                .filter(bare -> !bare.first().refused())
                .flatMap(bare -> bare.figure(WaveformQuantity.THD).asValue())
                .filter(thd -> thd.number() - 2 * thd.standardUncertainty() > MOST_THD)
                .map(thd ->
                        Reason.of(DeviceReason.SOURCE_DISTORTED, Argument.significant(thd.number(), Unit.PERCENT, 2)));
    }
}
