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

    /** Five times the usual limit of a change of asymmetry, points of percent. */
    private static final double LOST_POINTS = 10;

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
     * are not. Where it may as well be 0, what its size lies below: −7 ± 43 µV of mean is none that was seen, and below 50 µV. A figure in
     * decibels or degrees stays what it is.
     */
    public static Measured figure(WaveformQuantity quantity, Measured figure) {
        if (ASYMMETRIES.contains(quantity)
                && figure.asValue().filter(v -> v.expanded() > LOST_POINTS).isPresent()) {
            return Measured.refused(
                    figure.unit(),
                    Reason.of(
                            FigureReason.KNOWN_TOO_ROUGHLY,
                            Argument.decimals(figure.asValue().orElseThrow().expanded(), Unit.ONE, 0)));
        }
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
