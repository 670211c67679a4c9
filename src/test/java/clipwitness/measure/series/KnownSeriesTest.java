package clipwitness.measure.series;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.TransferCurve;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Slopes and marks on straight and on bent courses over the gain control. */
class KnownSeriesTest {
    private static Measured.Value percent(double number, double uncertainty) {
        return Measured.withNoise(number, Unit.PERCENT, uncertainty);
    }

    private static double part(Measured measured, Source source) {
        return measured.asValue().orElseThrow().budget().stream()
                .filter(c -> c.source() == source)
                .mapToDouble(c -> c.standardUncertainty())
                .reduce(0, Math::hypot);
    }

    /** Two settings: 4 dB over 20 %; the slope may be nothing, and half widths of 1 dB over 20 % come to it. */
    @Test
    void twoSettingsHaveTheSlopeOfTheirChord() {
        GainSlope slope = GainSlope.at(new double[] {30, 50}, new double[] {1, 5}, new double[] {0, 1}, 0);
        assertThat(slope.slope()).isCloseTo(0.2, within(1e-12));
        assertThat(slope.bound()).isCloseTo(0.25, within(1e-12));
        assertThat(GainSlope.at(new double[] {30, 50}, new double[] {5, 1}, new double[] {0, 1}, 1)
                        .bound())
                .isCloseTo(0.2, within(1e-12));
    }

    /** 0, 2, 8 at 0, 10, 20: harmonic mean of 0.2 and 0.6 is 0.3; the chords are off by 0.1 and 0.3. */
    @Test
    void aBentCourseIsOffItsChords() {
        double[] gains = {0, 10, 20};
        double[] figures = {0, 2, 8};
        GainSlope middle = GainSlope.at(gains, figures, new double[] {5, 0, 0}, 1);
        assertThat(middle.slope()).isCloseTo(0.3, within(1e-12));
        assertThat(middle.bound()).isCloseTo(0.6, within(1e-12));
        assertThat(GainSlope.at(gains, figures, new double[3], 1).bound()).isCloseTo(0.3, within(1e-12));
        GainSlope first = GainSlope.at(gains, figures, new double[3], 0);
        assertThat(first.slope()).isCloseTo(0.15, within(1e-12)); // (3 x 0.2 - 0.3) / 2
        assertThat(first.bound()).isCloseTo(0.05, within(1e-12));
        GainSlope last = GainSlope.at(gains, figures, new double[] {0, 1, 0}, 2);
        assertThat(last.slope()).isCloseTo(0.75, within(1e-12)); // (3 x 0.6 - 0.3) / 2
        assertThat(last.bound()).isCloseTo(0.25, within(1e-12));
        assertThat(new GainSlope(3, 4 * Math.sqrt(3)).effective()).isCloseTo(5, within(1e-12));
        assertThat(new GainSlope(-3, 1.73).isWellKnown()).isTrue();
        assertThat(new GainSlope(-3, 1.74).isWellKnown()).isFalse();
        assertThat(new GainSlope(-3, 1).times(-2)).isEqualTo(new GainSlope(6, 2));
    }

    /** e-fold every 20 %: 1 % at 0, e % at 20. The mark at half the way lies at 10, and moves by 20 % a unit of the logarithm. */
    private static final ThdCurve E_FOLD = ThdCurve.of(
            List.of(0.0, 20.0, 40.0),
            List.of(percent(1, 0.03), percent(Math.E, 0.04 * Math.E), percent(Math.E * Math.E, 0.1)));

    @Test
    void aMarkIsUncertainByItsNeighboursAndItself() {
        Measured half = E_FOLD.gainAt(percent(Math.sqrt(Math.E), 0));
        assertThat(half.value().orElseThrow()).isCloseTo(10, within(1e-6));
        assertThat(part(half, Source.NOISE)).isCloseTo(Math.hypot(0.3, 0.4), within(1e-6));
        Measured quarter = E_FOLD.gainAt(percent(Math.exp(0.25), 0.05 * Math.exp(0.25)));
        assertThat(quarter.value().orElseThrow()).isCloseTo(5, within(1e-6));
        assertThat(part(quarter, Source.NOISE)).isCloseTo(Math.sqrt(0.45 * 0.45 + 0.2 * 0.2 + 1), within(1e-6));
        assertThat(part(half, Source.METHOD)).isBetween(0.1, 1.5);
    }

    /** Distortion that grows by 1 % every 20 % of the way: over its logarithm the mark of 1.5 % lies beside 10. */
    @Test
    void theMethodIsOffByTheChoiceOfTheScale() {
        ThdCurve linear = ThdCurve.of(
                List.of(0.0, 20.0, 40.0, 60.0),
                List.of(percent(1, 0.01), percent(2, 0.01), percent(3, 0.01), percent(4, 0.01)));
        Measured mark = linear.gainAt(percent(1.5, 0));
        double off = Math.abs(mark.value().orElseThrow() - 10);
        assertThat(off).isBetween(0.02, 3.0);
        assertThat(part(mark, Source.METHOD)).isGreaterThan(off / Math.sqrt(3));
    }

    /** 1 % at the lowest setting known to 3 %: a mark of 0.95 % known to 2 % may be its, 20 % a unit of the logarithm. */
    @Test
    void aMarkThatMayBeAnEndsIsUncertainByBoth() {
        Measured low = E_FOLD.gainAt(percent(0.95, 0.019));
        assertThat(low.value()).hasValue(0);
        assertThat(part(low, Source.NOISE)).isCloseTo(20 * Math.hypot(0.03, 0.02), within(1e-6));
        assertThat(E_FOLD.gainAt(percent(0.92, 0.019)).value()).isEmpty();
        assertThat(E_FOLD.gainAt(percent(0.95, 0)).value()).isEmpty();
        assertThat(E_FOLD.gainAt(percent(7.45, 0.07)).value()).hasValue(40);
    }

    /** A lower setting hidden in noise below 0.5 %: 2.1 % at the upper one is 5 % above the mark, half of 0.95 before it, as the chord from nothing. */
    @Test
    void aMarkCloseBelowASettingIsPlacedBeforeIt() {
        ThdCurve hidden = ThdCurve.of(
                List.of(0.0, 20.0, 40.0),
                List.of(percent(0.1, 0.2).asUpperBound(), percent(2.1, 0.021), percent(6, 0.06)));
        Measured close = hidden.gainAt(percent(2, 0.02));
        double reach = 20 * 0.1 / 2.1;
        assertThat(close.value().orElseThrow()).isCloseTo(20 - reach / 2, within(1e-9));
        assertThat(part(close, Source.METHOD)).isCloseTo(reach / 2 / Math.sqrt(3), within(1e-9));
        assertThat(part(close, Source.NOISE)).isCloseTo(20 * Math.hypot(0.01, 0.01), within(1e-9));
        assertThat(hidden.gainAt(percent(1.5, 0)).value()).isEmpty();
        ThdCurve slower = ThdCurve.of(
                List.of(0.0, 20.0, 40.0),
                List.of(percent(0.1, 0.2).asUpperBound(), percent(2.1, 0.021), percent(4, 0.06)));
        assertThat(slower.gainAt(percent(2, 0.02)).value()).isEmpty();
    }

    /** y = x: dB for dB. A curve that ends at ±0.5: the rms of a clipped sine, integrated over fine steps. */
    @Test
    void theLevelFollowsTheDriveAsTheCurveDoes() {
        double[] x = IntStream.rangeClosed(-100, 100).mapToDouble(i -> i / 50.0).toArray();
        TransferCurve straight = curve(x, x);
        assertThat(LevelOverDrive.change(straight, 2, 1)).isCloseTo(-6.0206, within(1e-3));
        double[] clipped = IntStream.range(0, x.length)
                .mapToDouble(i -> 0.2 + Math.max(-0.5, Math.min(0.5, x[i])))
                .toArray();
        assertThat(LevelOverDrive.change(curve(x, clipped), 2, 1))
                .isCloseTo(20 * Math.log10(clippedRms(1) / clippedRms(2)), within(1e-3));
        assertThat(LevelOverDrive.change(straight, 1, 1)).isZero();
    }

    private static double clippedRms(double peak) {
        double square = 0;
        for (int i = 0; i < 10_000; i++) {
            double y = Math.min(0.5, peak * Math.sin(Math.PI * (i + 0.5) / 10_000));
            square += y * y / 10_000;
        }
        return Math.sqrt(square);
    }

    private static TransferCurve curve(double[] x, double[] y) {
        return new TransferCurve(Samples.of(x), Samples.of(y), 0, false);
    }
}
