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

    private static double part(Measured.Value value, Source source) {
        return value.budget().stream()
                .filter(c -> c.source() == source)
                .mapToDouble(Contribution::standardUncertainty)
                .reduce(0, Math::hypot);
    }

    private static ResponsePoint known(double frequency, double decibels, double uncertainty) {
        return new ResponsePoint(
                frequency,
                Measured.of(decibels, Unit.DECIBEL, new Contribution(Source.NOISE, uncertainty)),
                Measured.of(0, Unit.DEGREE),
                OptionalDouble.empty());
    }

    /**
     * A quarter of the way from 1 kHz to 2 kHz: three quarters of 0.04 dB and a quarter of 0.12 dB of noise; of a step of 4 dB between the points half, and of
     * that half, since half way would leave all of it, as a bound.
     */
    @Test
    void aGainBetweenPointsIsUncertainByBothAndByTheStep() {
        ResponseCurve curve = new ResponseCurve(List.of(known(1000, 1, 0.04), known(2000, -3, 0.12)));
        Measured.Value at = curve.gainAt(1000 * Math.pow(2, 0.25)).orElseThrow();
        assertThat(at.number()).isCloseTo(0, within(1e-9));
        assertThat(part(at, Source.NOISE)).isCloseTo(0.03 * Math.sqrt(2), within(1e-9));
        assertThat(part(at, Source.METHOD)).isCloseTo(1 / Math.sqrt(3), within(1e-9));
        Measured.Value other = curve.gainAt(1000 * Math.pow(2, 0.75)).orElseThrow();
        assertThat(part(other, Source.NOISE)).isCloseTo(Math.hypot(0.01, 0.09), within(1e-9));
        assertThat(part(other, Source.METHOD)).isCloseTo(1 / Math.sqrt(3), within(1e-9));
    }

    /** 1.1 octaves are the widest step that is read between; half a percent beside a point is the point. */
    @Test
    void stepsBeyondElevenTenthsOfAnOctaveAreNotReadBetween() {
        assertThat(new ResponseCurve(List.of(known(1000, 0, 1), known(1000 * Math.pow(2, 1.09), 0, 1))).gainAt(1500))
                .isPresent();
        assertThat(new ResponseCurve(List.of(known(1000, 0, 1), known(1000 * Math.pow(2, 1.11), 0, 1))).gainAt(1500))
                .isEmpty();
        ResponseCurve one = new ResponseCurve(List.of(known(1000, 3, 1)));
        assertThat(one.at(1004)).isPresent();
        assertThat(one.at(1006)).isEmpty();
        assertThat(one.at(994)).isEmpty();
        assertThat(one.gainAt(1006)).isEmpty();
        assertThat(one.highest().orElseThrow().number()).isEqualTo(3);
    }

    /**
     * From 0 dB at 1 kHz to 6.0206 dB less at 2 kHz: 3.0103 dB less lies half way, at 1,414.2 Hz. Noise of 0.1 dB and 0.05 dB counts as root 2 times
     * the larger, over 6.0206 dB an octave; half way the curve may bend by a quarter of the octave, as a bound.
     */
    @Test
    void aCornerIsUncertainByNoiseAndByWhatLiesBetweenThePoints() {
        ResponseCurve curve = new ResponseCurve(
                List.of(known(500, 0, 0.1), known(1000, 0, 0.1), known(2000, -20 * Math.log10(2), 0.05)));
        Measured.Value corner = curve.upperCorner().asValue().orElseThrow();
        assertThat(corner.number()).isCloseTo(1414.2, within(0.1));
        double perDecibel = 1414.2 * Math.log(2) / 6.0206;
        assertThat(part(corner, Source.NOISE)).isCloseTo(0.1 * Math.sqrt(2) * perDecibel, within(0.01));
        assertThat(part(corner, Source.METHOD)).isCloseTo(1414.2 * Math.log(2) / 4 / Math.sqrt(3), within(0.1));
        assertThat(curve.lowerCorner().value()).isEmpty();
        ResponseCurve mirrored = new ResponseCurve(
                List.of(known(500, -20 * Math.log10(2), 0.1), known(1000, 0, 0.1), known(2000, 0, 0.05)));
        assertThat(mirrored.lowerCorner().value().orElseThrow()).isCloseTo(707.1, within(0.1));
        assertThat(new ResponseCurve(List.of()).upperCorner().value()).isEmpty();
    }

    /** Exactly half of the power less: the corner is that point. */
    @Test
    void aPointAtHalfThePowerIsTheCorner() {
        double half = 10 * Math.log10(2);
        ResponseCurve curve = new ResponseCurve(List.of(known(1000, 0, 0.1), known(1500, -half, 0.1)));
        assertThat(curve.upperCorner().value().orElseThrow()).isCloseTo(1500, within(1e-6));
    }
}
