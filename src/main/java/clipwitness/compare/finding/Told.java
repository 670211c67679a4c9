package clipwitness.compare.finding;

import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Word;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Figures as a page tells them, where the figure alone would be read for more than is known. The results keep every figure as it was measured. */
public final class Told {
    /**
     * Half or double the harmonic, dB: 20 lg 2. An interval that holds no change and is wider than from half to double says neither which of the two
     * states has more of the harmonic nor how far they can lie apart.
     */
    private static final double HALF_OR_DOUBLE_DECIBELS = 20 * Math.log10(2);

    /** In these units 0 is a figure as any other, not the absence of something. */
    private static final Set<Unit> ZERO_IS_A_FIGURE = EnumSet.of(Unit.DECIBEL, Unit.DBC, Unit.DEGREE, Unit.CELSIUS);

    private static final Set<WaveformQuantity> ASYMMETRIES =
            EnumSet.of(WaveformQuantity.ASYMMETRY, WaveformQuantity.CLIP_ASYMMETRY);

    /** Ratios of two inputs, in dB: a corner has 0, what bends slowly 15. */
    private static final Set<WaveformQuantity> KNEES = EnumSet.of(WaveformQuantity.KNEE_UP, WaveformQuantity.KNEE_DOWN);

    private static final Set<WaveformQuantity> ONSETS =
            EnumSet.of(WaveformQuantity.ONSET_UP, WaveformQuantity.ONSET_DOWN);

    /** A level at which something begins, known to no better than this share of it, may be three times as high at one end as at the other. */
    private static final double LOST_SHARE = 0.5;

    /** Five times the usual limit of a change of asymmetry, points of percent. */
    private static final double LOST_POINTS = 10;

    /** A place on a knob that is known to no better than a fifth of its way up and down may be most of its places, percent. */
    private static final double LOST_ROTATION = 20;

    private Told() {}

    /** The change of a harmonic at equal loudness in dB with its budget, or a refusal where it says nothing; a refusal stays what it is. */
    public static Measured harmonic(LevelMatchedHarmonic harmonic) {
        Measured change = harmonic.change();
        return change.asValue().filter(Told::saysNothing).isEmpty()
                ? change
                : Measured.refused(
                        change.unit(),
                        Reason.of(
                                FigureReason.HARMONIC_BURIED,
                                Argument.word(Word.HARMONIC, Argument.count(harmonic.order()))));
    }

    private static boolean saysNothing(Measured.Value change) {
        return !Significance.of(change) && change.expanded() > HALF_OR_DOUBLE_DECIBELS;
    }

    /**
     * A figure of a capture. An asymmetry that is known to no better than 10 points is refused: it says neither that the halves are alike nor how far they
     * are not; so is a knee that may be a corner or none, and an onset that is known to no better than half of it. Where it may as well be 0, what its size lies below: −7 ± 43 µV of mean is none that was seen, and below 50 µV. A figure in
     * decibels or degrees stays what it is.
     */
    public static Measured figure(WaveformQuantity quantity, Measured figure) {
        if (ASYMMETRIES.contains(quantity)) {
            return unlessLost(figure, LOST_POINTS, Told::bounded);
        }
        if (ONSETS.contains(quantity)
                && figure.asValue().filter(Told::isHalfLost).isPresent()) {
            return tooRoughly(figure.unit(), Argument.nominal(100 * LOST_SHARE, Unit.PERCENT));
        }
        return KNEES.contains(quantity) ? unlessLost(figure, HALF_OR_DOUBLE_DECIBELS, f -> f) : bounded(figure);
    }

    /** A place on the gain control, percent of its rotation, or a refusal where it may be most of them. */
    public static Measured rotation(Measured place) {
        return unlessLost(place, LOST_ROTATION, p -> p);
    }

    /**
     * A change of one figure to another, or a refusal where it says nothing: in dB, where it holds no change and may be half or double. A change in other
     * units stays what it is.
     */
    public static Measured change(Measured change) {
        return change.asValue()
                        .filter(v -> v.unit() == Unit.DECIBEL && saysNothing(v))
                        .isPresent()
                ? lost(change.unit(), HALF_OR_DOUBLE_DECIBELS)
                : change;
    }

    /**
     * Whether of a change in dB only the least size is told: it exceeds its uncertainty, which is so wide, half or double, that digits of its size would be
     * read for more than is known.
     */
    public static boolean isAtLeast(Measured.Value change) {
        return change.unit() == Unit.DECIBEL && isAtLeast(change.number(), change.expanded());
    }

    /** The same of a difference of two levels in dB and its expanded uncertainty. */
    public static boolean isAtLeast(double change, double expanded) {
        return Significance.exceeds(change, expanded) && expanded >= HALF_OR_DOUBLE_DECIBELS;
    }

    /** What a change is at least, in whole units, from its size and its expanded uncertainty. */
    public static double least(double size, double expanded) {
        return Math.floor(size - expanded);
    }

    /** The figure, or a refusal where its uncertainty exceeds what leaves anything to say; the reason names that, so that a table tells it once. */
    private static Measured unlessLost(Measured figure, double lost, UnaryOperator<Measured> told) {
        return figure.asValue().filter(v -> v.expanded() > lost).isPresent()
                ? lost(figure.unit(), lost)
                : told.apply(figure);
    }

    private static Measured lost(Unit unit, double lost) {
        return tooRoughly(unit, Argument.nominal(Math.rint(lost), unit));
    }

    private static Measured tooRoughly(Unit unit, Argument how) {
        return Measured.refused(unit, Reason.of(FigureReason.KNOWN_TOO_ROUGHLY, how));
    }

    private static boolean isHalfLost(Measured.Value figure) {
        return figure.expanded() > LOST_SHARE * Math.abs(figure.number());
    }

    private static Measured bounded(Measured figure) {
        return figure.asValue().filter(Told::mayBeNone).isEmpty()
                ? figure
                : bound(figure.asValue().orElseThrow());
    }

    private static boolean mayBeNone(Measured.Value figure) {
        return !figure.isUpperBound() && !ZERO_IS_A_FIGURE.contains(figure.unit()) && !Significance.of(figure);
    }

    private static Measured bound(Measured.Value figure) {
        return new Measured.Value(Math.abs(figure.number()), figure.unit(), figure.budget(), true);
    }
}
