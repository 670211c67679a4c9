package clipwitness.compare.rule;

import clipwitness.compare.finding.Difference;
import clipwitness.compare.finding.Onset;
import clipwitness.compare.finding.Significance;
import clipwitness.measure.Measured;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import java.util.Optional;

/** How the settings at which two states reach a mark lie to one another. */
final class OnsetKinds {
    private OnsetKinds() {}

    /** What can be said; empty where one of the two is not known, or neither has a place. */
    static Optional<Onset.Kind> of(Measured from, Measured to) {
        if (from.asValue().isPresent() && to.asValue().isPresent()) {
            return Optional.of(
                    of(Difference.of(from.asValue().orElseThrow(), to.asValue().orElseThrow())));
        }
        if (from.asValue().isPresent()) {
            return without(to, Onset.Kind.BELOW, Onset.Kind.NEVER);
        }
        return to.asValue().isPresent() ? without(from, Onset.Kind.ABOVE, Onset.Kind.NEW) : Optional.empty();
    }

    private static Onset.Kind of(Difference settings) {
        if (!Significance.exceeds(settings.change(), settings.uncertainty())) {
            return Onset.Kind.SAME;
        }
        return settings.isRise() ? Onset.Kind.LATER : Onset.Kind.EARLIER;
    }

    /** A state that never reaches the mark is distinguished from one that was beyond it from the start; any other reason gives no finding. */
    private static Optional<Onset.Kind> without(Measured refused, Onset.Kind below, Onset.Kind never) {
        Reason reason = refused.reason().orElseThrow();
        if (reason.is(FigureReason.BELOW_LOWEST_SETTING)) {
            return Optional.of(below);
        }
        return reason.is(FigureReason.NOT_REACHED) ? Optional.of(never) : Optional.empty();
    }
}
