package clipwitness.reading.time;

import clipwitness.quantity.Unit;
import clipwitness.reading.file.Notes;
import clipwitness.reading.number.WrittenUnit;
import clipwitness.reason.Argument;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.LayoutRemark;
import clipwitness.reason.Severity;

/** Doubts that time stamps raise: two rows a stamp, stamps that repeat because they are rounded, samples not evenly spaced. */
final class StampDoubts {
    private StampDoubts() {}

    /** Two rows a stamp. */
    static void addEnvelope(Notes notes) {
        notes.evidence(LayoutRemark.TWO_ROWS_A_STAMP);
        notes.doubt(Severity.REFUSAL, DoubtReason.REPEATED_TIME_ROWS);
    }

    /** Stamps that repeat or do not lie on a line. */
    static void add(Stamps stamps, WrittenUnit unit, Notes notes) {
        if (stamps.repeats() > 0) {
            notes.doubt(
                    Severity.WARNING,
                    DoubtReason.REPEATED_TIME,
                    Argument.count(stamps.repeats()),
                    Argument.count(stamps.size()),
                    Argument.prefixed(unit.resolve(stamps.interval()), Unit.SECOND, 6));
        }
        addUneven(stamps, notes);
    }

    /** Stamps, or an index, that do not lie on a line. */
    static void addUneven(Stamps stamps, Notes notes) {
        if (!stamps.even()) {
            double intervals = stamps.worst() / stamps.interval();
            Stamps.Step widest = stamps.widest();
            notes.doubt(
                    intervals > 1 ? Severity.REFUSAL : Severity.WARNING,
                    DoubtReason.UNEVEN_TIME,
                    Argument.plain(intervals, Unit.ONE, 2),
                    Argument.place(widest.row()),
                    Argument.written(widest.from(), Unit.SECOND),
                    Argument.written(widest.to(), Unit.SECOND));
        }
    }
}
