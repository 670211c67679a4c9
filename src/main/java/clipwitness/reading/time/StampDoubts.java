package clipwitness.reading.time;

import clipwitness.capture.DoubtCode;
import clipwitness.capture.Severity;
import clipwitness.quantity.NumberText;
import clipwitness.reading.file.Notes;
import clipwitness.reading.number.WrittenUnit;
import java.util.Locale;

/** Doubts that time stamps raise: two rows a stamp, stamps that repeat because they are rounded, samples not evenly spaced. */
final class StampDoubts {
    private StampDoubts() {}

    /** Two rows a stamp. */
    static void addEnvelope(Notes notes) {
        notes.evidence("every time stamp stands on two rows; the middle of each pair is kept");
        notes.doubt(
                DoubtCode.REPEATED_TIME,
                Severity.REFUSAL,
                "Every time stamp stands on two rows: this is the record of an envelope (peak detect), the smallest and "
                        + "the largest value of each interval. It cannot be measured as a wave.");
    }

    /** Stamps that repeat or do not lie on a line. */
    static void add(Stamps stamps, WrittenUnit unit, Notes notes) {
        if (stamps.repeats() > 0) {
            notes.doubt(
                    DoubtCode.REPEATED_TIME,
                    Severity.WARNING,
                    stamps.repeats() + " of " + stamps.size() + " time stamps repeat the one before: they are rounded. "
                            + "The sample interval of " + TimeAxisFinder.seconds(unit.resolve(stamps.interval()))
                            + " is the least-squares line through all.");
        }
        addUneven(stamps, notes);
    }

    /** Stamps, or an index, that do not lie on a line. */
    static void addUneven(Stamps stamps, Notes notes) {
        if (!stamps.even()) {
            double intervals = stamps.worst() / stamps.interval();
            Stamps.Step widest = stamps.widest();
            notes.doubt(
                    DoubtCode.UNEVEN_TIME,
                    intervals > 1 ? Severity.REFUSAL : Severity.WARNING,
                    String.format(
                            Locale.ROOT,
                            "The samples are not evenly spaced: a stamp lies up to %s intervals off an even grid. The widest step"
                                    + " comes after sample %d, from %s to %s.",
                            NumberText.plain(intervals, 2),
                            widest.row(),
                            widest.from(),
                            widest.to()));
        }
    }
}
