package clipwitness.reading.time;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.quantity.Unit;
import clipwitness.reading.file.Notes;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.Preamble;
import clipwitness.reading.number.WrittenUnit;
import clipwitness.reason.Argument;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.LayoutRemark;
import clipwitness.reason.Remark;
import clipwitness.reason.Severity;
import clipwitness.reason.Word;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds the sample interval: from the user, from the time stamps, from the preamble, or from both where they agree. */
public final class TimeAxisFinder {
    private static final double AGREES = 1e-3;

    private final String file;
    private final Optional<Sampling> sampling;
    private final Preamble preamble;
    private final OptionalDouble given;
    private final Notes notes;

    public TimeAxisFinder(
            String file, Preamble preamble, Optional<Sampling> sampling, OptionalDouble given, Notes notes) {
        this.file = file;
        this.sampling = sampling;
        this.preamble = preamble;
        this.given = given;
        this.notes = notes;
    }

    /** The axis from time stamps. */
    public TimeAxis fromStamps(Column time, double[] written, int digits) throws InputException {
        Stamps rows = Stamps.of(written, digits);
        boolean envelope = rows.envelope();
        if (envelope) {
            StampDoubts.addEnvelope(notes);
        }
        Stamps stamps = envelope ? Stamps.of(Envelope.middles(written), digits) : rows;
        if (!(stamps.interval() > 0)) {
            throw new InputException(
                    ErrorCode.BAD_TIME,
                    new Origin(file, 0, "column " + time.called()),
                    "all time stamps are equal",
                    "Export the capture again with more digits of time");
        }
        Optional<WrittenUnit> known = TimeUnit.stated(time, preamble);
        if (given.isEmpty() && sampling.isEmpty() && known.isEmpty()) {
            ForeignTimeUnit.refuse(file, time);
        }
        WrittenUnit unit = given.isPresent() && known.isEmpty()
                ? new WrittenUnit(Unit.SECOND, 0)
                : TimeUnit.of(time, stamps, preamble, sampling, notes);
        StampDoubts.add(stamps, unit, notes);
        double start = unit.resolve(stamps.start());
        double interval = unit.resolve(stamps.interval());
        if (given.isPresent()) {
            double stated = given.getAsDouble();
            boolean prefix = known.isEmpty() && TimeUnit.fitting(stamps, stated).isPresent();
            boolean agrees = prefix || Math.abs(stated / interval - 1) <= AGREES + stamps.resolution();
            return new TimeAxis(
                    start * (stated / interval),
                    stated(
                            Remark.of(LayoutRemark.INTERVAL_OVER_STAMPS, seconds(stated), seconds(interval)),
                            Remark.of(Word.TIME_STAMPS),
                            interval,
                            agrees),
                    envelope);
        }
        return new TimeAxis(start, combined(stamps, interval), envelope);
    }

    /** The axis from the preamble and an index, which may leave samples out. */
    public TimeAxis fromIndex(Stamps index) throws InputException {
        StampDoubts.addUneven(index, notes);
        return fromPreamble(index.interval());
    }

    /**
     * The axis from the preamble alone.
     *
     * @param rowStep samples from row to row: more than 1 where an index column leaves some out
     */
    public TimeAxis fromPreamble(double rowStep) throws InputException {
        double start = StartTime.of(preamble).orElse(0);
        if (given.isPresent()) {
            return new TimeAxis(start, statedBesidePreamble(rowStep), false);
        }
        if (sampling.isEmpty()) {
            throw new InputException(
                    ErrorCode.NO_INTERVAL,
                    Origin.of(file),
                    "there is neither a time column nor a sample interval or rate",
                    "State it in the column interval of captures.csv, or with the option --interval of look"
                            + ". Of a traced curve, write V and A into the headings of its columns");
        }
        double interval = sampling.get().interval() * rowStep;
        Argument place = sampling.get().place();
        if (sampling.get().grouped()) {
            Argument written =
                    Argument.name(String.join(",", sampling.get().fact().values()));
            notes.doubt(Severity.WARNING, DoubtReason.UNIT_ASSUMED_THOUSANDS, written, place, seconds(interval));
        }
        notes.evidence(
                rowStep == 1
                        ? Remark.of(LayoutRemark.INTERVAL_STATED, seconds(interval), place)
                        : Remark.of(
                                LayoutRemark.INTERVAL_OF_INDEX,
                                seconds(interval),
                                place,
                                Argument.count(Math.round(rowStep))));
        return new TimeAxis(start, interval, false);
    }

    private double statedBesidePreamble(double rowStep) {
        double stated = given.getAsDouble();
        if (sampling.isPresent()) {
            double own = sampling.get().interval() * rowStep;
            boolean agrees =
                    Math.abs(stated / own - 1) <= AGREES + sampling.get().resolution();
            return stated(
                    Remark.of(
                            LayoutRemark.INTERVAL_OVER_STATEMENT,
                            seconds(stated),
                            sampling.get().place(),
                            seconds(own)),
                    sampling.get().statement(),
                    own,
                    agrees);
        }
        notes.evidence(LayoutRemark.INTERVAL_OF_USER, seconds(stated));
        return stated;
    }

    /** The user's interval, which wins over the file's own; not in silence. */
    private double stated(Remark evidence, Remark source, double own, boolean agrees) {
        double stated = given.getAsDouble();
        notes.evidence(evidence);
        if (!agrees) {
            notes.doubt(
                    Severity.WARNING,
                    DoubtReason.UNIT_ASSUMED_INTERVAL,
                    Argument.prefixed(stated, Unit.SECOND, 6),
                    Argument.inner(source),
                    Argument.prefixed(own, Unit.SECOND, 6));
        }
        return stated;
    }

    private double combined(Stamps stamps, double interval) {
        Argument count = Argument.count(stamps.size());
        if (sampling.isEmpty()) {
            notes.evidence(LayoutRemark.INTERVAL_OF_STAMPS, seconds(interval), count);
            return interval;
        }
        double preambles = sampling.get().interval();
        if (Math.abs(preambles / interval - 1) > AGREES + stamps.resolution()) {
            notes.evidence(
                    LayoutRemark.INTERVAL_CONTRADICTED,
                    seconds(interval),
                    count,
                    sampling.get().place(),
                    seconds(preambles));
            noteContradiction(stamps, interval);
            return interval;
        }
        boolean finer = sampling.get().resolution() < stamps.resolution();
        notes.evidence(
                finer ? LayoutRemark.INTERVAL_OF_PREAMBLE : LayoutRemark.INTERVAL_OF_LINE,
                seconds(finer ? preambles : interval),
                count,
                sampling.get().place());
        return finer ? preambles : interval;
    }

    /** A doubt, unless another statement of the preamble agrees with the stamps. */
    private void noteContradiction(Stamps stamps, double interval) {
        double allowed = AGREES + stamps.resolution();
        if (Sampling.all(preamble).stream().anyMatch(s -> Math.abs(s.interval() / interval - 1) <= allowed)) {
            return;
        }
        Argument stated = seconds(sampling.get().interval());
        Argument source = Argument.inner(sampling.get().statement());
        double times = interval / sampling.get().interval();
        boolean thinned = times > 1.5 && Math.abs(Math.rint(times) / times - 1) <= allowed && !isPrefix(times);
        if (thinned) {
            Argument nth = Argument.count(Math.round(times));
            notes.doubt(Severity.NOTE, DoubtReason.UNIT_ASSUMED_THINNED, seconds(interval), source, stated, nth);
        } else {
            notes.doubt(Severity.WARNING, DoubtReason.UNIT_ASSUMED_STAMPS, seconds(interval), source, stated);
        }
    }

    /** Whether a factor is that of another prefix of the unit: then it is a slip, and nothing was left out. */
    private static boolean isPrefix(double times) {
        double power = Math.log10(times) / 3;
        return Math.abs(power - Math.rint(power)) < AGREES;
    }

    /** An interval as the evidence says it. */
    private static Argument seconds(double interval) {
        return Argument.prefixed(interval, Unit.SECOND, 6);
    }
}
