package clipwitness.reading.time;

import clipwitness.quantity.Unit;
import clipwitness.reading.file.Notes;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.Preamble;
import clipwitness.reading.layout.Units;
import clipwitness.reading.number.WrittenUnit;
import clipwitness.reason.Argument;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.LayoutRemark;
import clipwitness.reason.Severity;
import java.util.List;
import java.util.Optional;

/** Finds the unit of time stamps: from heading or preamble, from the stated interval, or else seconds. */
public final class TimeUnit {
    private static final double AGREES = 1e-3;

    private TimeUnit() {}

    static WrittenUnit of(Column time, Stamps stamps, Preamble preamble, Optional<Sampling> sampling, Notes notes) {
        Optional<WrittenUnit> stated = stated(time, preamble);
        if (stated.isPresent()) {
            noteContradiction(stated.get(), stamps, preamble, sampling, notes);
            return stated.get();
        }
        Optional<WrittenUnit> fitting = sampling.flatMap(s -> fitting(stamps, s.interval()));
        if (fitting.isPresent()) {
            notes.evidence(
                    LayoutRemark.TIME_UNIT_BY_INTERVAL,
                    Argument.name(fitting.get().symbol()),
                    sampling.get().place());
            return fitting.get();
        }
        notes.evidence(LayoutRemark.TIME_IN_SECONDS);
        if (!time.heading().name().isEmpty()) {
            noteAssumed(notes);
        }
        return new WrittenUnit(Unit.SECOND, 0);
    }

    /** The unit that the file states, or empty. */
    static Optional<WrittenUnit> stated(Column time, Preamble preamble) {
        return time.heading().unit().or(() -> Units.ofTime(preamble));
    }

    /** Heading and preamble name two units of time; a stated interval that agrees with the heading settles it. */
    private static void noteContradiction(
            WrittenUnit heading, Stamps stamps, Preamble preamble, Optional<Sampling> sampling, Notes notes) {
        Optional<WrittenUnit> other = Units.ofTime(preamble).filter(u -> u.exponent() != heading.exponent());
        boolean settled = sampling.flatMap(s -> fitting(stamps, s.interval()))
                .filter(heading::equals)
                .isPresent();
        if (other.isPresent() && !settled) {
            notes.doubt(
                    Severity.WARNING,
                    DoubtReason.UNIT_ASSUMED_TIME_TWICE,
                    Argument.name(heading.symbol()),
                    Argument.name(other.get().symbol()));
        }
    }

    private static void noteAssumed(Notes notes) {
        notes.doubt(Severity.NOTE, DoubtReason.UNIT_ASSUMED_TIME);
    }

    /** The prefix with which the stamps advance by the stated interval. */
    public static Optional<WrittenUnit> fitting(Stamps stamps, double interval) {
        double allowed = AGREES + stamps.resolution();
        return List.of(0, -3, -6, -9, -12).stream()
                .map(e -> new WrittenUnit(Unit.SECOND, e))
                .filter(u -> Math.abs(u.resolve(stamps.interval()) / interval - 1) <= allowed)
                .findFirst();
    }
}
