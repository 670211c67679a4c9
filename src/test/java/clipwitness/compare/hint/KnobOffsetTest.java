package clipwitness.compare.hint;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.SaidHint;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.TestExamination;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Levels, dB, at 0, 25, 50, 75 and 100 % of the gain control, the distortion the same at all. The knob repeats to 1 %, as eight degrees of freedom tell; on a
 * slope of 0.1 dB per percent that is 0.1 dB in each state, and with Student's factor of 2.37 0.335 dB in their difference.
 */
class KnobOffsetTest {
    private static final double[] STRAIGHT = {0, 2.5, 5, 7.5, 10};
    private static final double EXACT = 1e-5;

    @TempDir
    private Path folder;

    private static Stream<MadeUpCapture> state(String name, double relative, double... decibels) {
        return Stream.iterate(0, i -> i + 1)
                .limit(decibels.length)
                .map(i -> MadeUpCapture.ordinary(name, 100.0 * i / (decibels.length - 1))
                        .with(
                                WaveformQuantity.RMS,
                                0.1 * Math.pow(10, decibels[i] / 20),
                                relative * 0.1 * Math.pow(10, decibels[i] / 20)));
    }

    private List<String> found(double relative, double[] before, double... after) throws IOException, InputException {
        return found(Stream.concat(state("before", relative, before), state("old", relative, after)));
    }

    private List<String> found(Stream<MadeUpCapture> captures) throws IOException, InputException {
        return new TestExamination(folder)
                .of(captures.toArray(MadeUpCapture[]::new)).hints().stream()
                        .map(SaidHint::of)
                        .filter(h -> h.code().equals("knob-offset"))
                        .map(SaidHint::evidence)
                        .toList();
    }

    private static String turned(String percent, String left) {
        return "turning it by " + percent + " % of its rotation leaves no change of level or distortion above " + left
                + " dB";
    }

    /** 0.1 dB per percent up to half way, 0.02 beyond: 5 % more are 0.5, 0.1 and 0.1 dB, 5 % less 0.5, 0.5 and 0.1 dB. */
    @Test
    void aBentCurveIsFollowedOnTheSideThatTheKnobWentTo() throws IOException, InputException {
        double[] bent = {0, 2.5, 5, 5.5, 6};
        assertThat(found(EXACT, bent, 0, 3, 5.1, 5.6, 6)).containsExactly(turned("+5.0", "0.00"));
        assertThat(found(EXACT, bent, 0, 2, 4.5, 5.4, 6)).containsExactly(turned("\u22125.0", "0.00"));
    }

    @Test
    void whatTheShiftLeavesIsSaid() throws IOException, InputException {
        assertThat(found(EXACT, STRAIGHT, 0, 3.05, 5.45, 8, 10)).containsExactly(turned("+5.0", "0.05"));
    }

    @Test
    void aShiftWithinTheKnobsOwnRepeatabilityIsNone() throws IOException, InputException {
        assertThat(found(EXACT, STRAIGHT, 0, 2.82, 5.32, 7.82, 10)).isEmpty();
        assertThat(found(EXACT, STRAIGHT, 0, 2.85, 5.35, 7.85, 10)).hasSize(1);
    }

    /** Each level known to 2 %, 0.49 dB expanded in a difference: 0.9, 0.1 and 0.5 dB are 5 % within that, but three tenths of their squares stay. */
    @Test
    void aShiftThatLeavesATenthOfTheSquaresExplainsNothing() throws IOException, InputException {
        assertThat(found(0.02, STRAIGHT, 0, 3.4, 5.1, 8, 10)).isEmpty();
        assertThat(found(0.02, STRAIGHT, 0, 3.2, 5.7, 8.2, 10)).hasSize(1);
    }

    /** Of five settings three lie between the stops, of three one. */
    @Test
    void fewerThanThreeChangesAreTooFew() throws IOException, InputException {
        assertThat(found(EXACT, new double[] {0, 5, 10}, 0, 5.5, 10)).isEmpty();
    }

    @Test
    void aLevelThatMovedAtAnEndStopIsNoKnob() throws IOException, InputException {
        assertThat(found(EXACT, STRAIGHT, 0, 3, 5.5, 8, 10.3)).isEmpty();
        assertThat(found(EXACT, STRAIGHT, 0.3, 3, 5.5, 8, 10)).isEmpty();
    }

    /** A distortion that noise hides before the work is anything below its bound; what it is after does not count as a change. */
    @Test
    void aDistortionThatWasABoundBeforeIsLeftOut() throws IOException, InputException {
        Measured bound = Measured.withNoise(10, Unit.PERCENT, 0.01).asUpperBound();
        assertThat(found(Stream.concat(
                        state("before", EXACT, STRAIGHT).map(c -> c.with(WaveformQuantity.THD, bound)),
                        state("old", EXACT, 0, 3, 5.5, 8, 10).map(c -> c.with(WaveformQuantity.THD, 9, 0.01)))))
                .containsExactly(turned("+5.0", "0.00"));
    }
}
