package clipwitness.measure.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import clipwitness.reason.ResponseReason;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** First-order filters: |H|^2 = 1 / (1 + (f / fc)^2), half of the power at the corner (any handbook of electronics). */
class ResponseCurveTest {
    private static ResponsePoint point(double frequency, double decibels) {
        return new ResponsePoint(
                frequency,
                Measured.of(decibels, Unit.DECIBEL, new Contribution(Source.NOISE, 0.005)),
                Measured.of(0, Unit.DEGREE),
                OptionalDouble.empty());
    }

    /** A band-pass of two first-order sections, 12 points an octave. */
    private static ResponseCurve bandPass(double low, double high) {
        List<ResponsePoint> points = new ArrayList<>();
        for (int k = -60; k <= 48; k++) {
            double f = 1000 * Math.pow(2, k / 12.0);
            double power = 1 / ((1 + Math.pow(f / high, 2)) * (1 + Math.pow(low / f, 2)));
            points.add(point(f, 10 * Math.log10(power)));
        }
        return new ResponseCurve(points);
    }

    @Test
    void cornersOfABandPass() {
        ResponseCurve curve = bandPass(60, 6000);
        assertThat(curve.lowerCorner().value().orElseThrow())
                .isCloseTo(60, within(1.5)); // the other corner is two decades away
        assertThat(curve.upperCorner().value().orElseThrow()).isCloseTo(6000, within(150.0));
        double u = curve.upperCorner().expandedUncertainty().orElseThrow();
        assertThat(u).isBetween(5.0, 200.0);
    }

    @Test
    void aFlatCurveHasNoCorner() {
        ResponseCurve flat = new ResponseCurve(List.of(point(100, 0), point(1000, 0.1), point(10_000, -0.2)));
        assertThat(flat.upperCorner().reason().orElseThrow().code()).isEqualTo(ResponseReason.NO_CORNER);
        assertThat(flat.lowerCorner().reason().orElseThrow().code()).isEqualTo(ResponseReason.NO_CORNER);
    }

    @Test
    void betweenPointsAnOctaveApartTheCurveIsRead() {
        ResponseCurve curve = new ResponseCurve(List.of(point(2000, -1), point(1000, 1), point(8000, -7)));
        assertThat(curve.gainAt(1000 * Math.sqrt(2)).orElseThrow().number()).isCloseTo(0, within(1e-9));
        assertThat(curve.gainAt(1000).orElseThrow().number()).isEqualTo(1);
        assertThat(curve.gainAt(4000)).isEmpty(); // two octaves between its neighbours
        assertThat(curve.gainAt(500)).isEmpty();
    }
}
