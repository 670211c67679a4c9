package clipwitness.compare.rule;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.finding.Onset;
import clipwitness.fixture.ExampleJob;
import clipwitness.measure.Measured;
import clipwitness.measure.series.ThdCurve;
import clipwitness.quantity.Unit;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class OnsetKindsTest {
    private static final Measured.Value MARK = Measured.of(3, Unit.PERCENT);

    private static Measured gain(double percent) {
        return ExampleJob.value(percent, Unit.PERCENT, 1.2);
    }

    private static Measured on(List<Double> gains, double... thds) {
        List<Measured> figures = Arrays.stream(thds)
                .<Measured>mapToObj(t -> ExampleJob.value(t, Unit.PERCENT, 0.01))
                .toList();
        return ThdCurve.of(gains, figures).gainAt(MARK);
    }

    /** A state with one setting was measured at 28.1 % distortion there: that it does not reach 3 % at any setting would be false. */
    @Test
    void oneSettingAloneSaysNothingOfWhereDistortionBegins() {
        Measured one = on(List.of(100.0), 28.1);
        assertThat(OnsetKinds.of(gain(41), one)).isEmpty();
        assertThat(OnsetKinds.of(one, gain(41))).isEmpty();
    }

    @Test
    void aCurveThatStaysBelowTheMarkNeverReachesIt() {
        Measured never = on(List.of(0.0, 50.0, 100.0), 0.1, 0.2, 0.4);
        assertThat(OnsetKinds.of(gain(41), never)).contains(Onset.Kind.NEVER);
        assertThat(OnsetKinds.of(never, gain(41))).contains(Onset.Kind.NEW);
    }

    @Test
    void aCurveThatBeginsAboveTheMarkIsBeyondItFromTheStart() {
        Measured beyond = on(List.of(0.0, 50.0, 100.0), 5, 10, 20);
        assertThat(OnsetKinds.of(gain(41), beyond)).contains(Onset.Kind.BELOW);
        assertThat(OnsetKinds.of(beyond, gain(41))).contains(Onset.Kind.ABOVE);
    }

    /** The uncertainty of the difference of two settings of ± 1.2 % is 1.7 % (root sum square). */
    @Test
    void settingsThatDifferByLessThanTheirUncertaintyAreTheSame() {
        assertThat(OnsetKinds.of(gain(41), gain(42.6))).contains(Onset.Kind.SAME);
        assertThat(OnsetKinds.of(gain(41), gain(42.8))).contains(Onset.Kind.LATER);
        assertThat(OnsetKinds.of(gain(41), gain(39.2))).contains(Onset.Kind.EARLIER);
    }

    @Test
    void whereNeitherStateHasAPlaceNothingIsSaid() {
        Measured never = on(List.of(0.0, 50.0, 100.0), 0.1, 0.2, 0.4);
        assertThat(OnsetKinds.of(never, never)).isEmpty();
    }
}
