package clipwitness.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fixture.TestRecord;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.Severity;
import clipwitness.signal.ReferenceRow;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Polynomials of a cosine against polynomial-harmonics.csv: exact rational arithmetic. */
class PolynomialHarmonicsTest {
    private static final double RECORD = 1e-9;

    private static final Map<String, DoubleUnaryOperator> MIXED = Map.of(
            "x+0.1x^2", x -> x + 0.1 * x * x,
            "x-0.1x^3", x -> x - 0.1 * x * x * x,
            "x+0.05x^2-0.2x^3+0.02x^4", x -> x + 0.05 * x * x - 0.2 * x * x * x + 0.02 * Math.pow(x, 4),
            "x-x^3/3+x^5/5-x^7/7", x -> x - Math.pow(x, 3) / 3 + Math.pow(x, 5) / 5 - Math.pow(x, 7) / 7,
            "0.9T1+0.09T2+0.03T3", x -> 0.9 * x + 0.09 * (2 * x * x - 1) + 0.03 * (4 * x * x * x - 3 * x));

    static Stream<ReferenceRow> rows() {
        return ReferenceRow.of(PolynomialHarmonicsTest.class, "polynomial-harmonics.csv");
    }

    /** Rows that have a fundamental. */
    static Stream<ReferenceRow> withFundamental() {
        return rows().filter(row -> row.number("h1 cosine series") != 0);
    }

    private static DoubleUnaryOperator polynomial(String name) {
        if (name.startsWith("Chebyshev T")) {
            int order = Integer.parseInt(name.substring("Chebyshev T".length()));
            return x -> Math.cos(order * Math.acos(x));
        }
        if (name.startsWith("cos^")) {
            int power = Integer.parseInt(name.substring("cos^".length()));
            return x -> Math.pow(x, power);
        }
        return MIXED.get(name);
    }

    private static WaveformResult measured(ReferenceRow row) {
        double amplitude = row.number("A");
        DoubleUnaryOperator polynomial = polynomial(row.text("polynomial in x = A cos t"));
        DoubleUnaryOperator cosine = p -> amplitude * Math.max(-1, Math.min(1, Math.cos(2 * Math.PI * p)));
        return WaveformMeasurement.of(
                TestRecord.of(cosine).sampled(400, 7.3, 0.21).through(polynomial));
    }

    @ParameterizedTest
    @MethodSource("withFundamental")
    void harmonicsAndMeanAreTheReferences(ReferenceRow row) {
        WaveformResult result = measured(row);
        for (int k = 1; k <= 15; k++) {
            assertThat(result.spectrum().orElseThrow().amplitude(k))
                    .as("h" + k)
                    .isCloseTo(Math.abs(row.number("h" + k + " cosine series")), within(RECORD));
        }
        assertThat(Values.value(result, WaveformQuantity.MEAN)).isCloseTo(row.number("dc"), within(RECORD));
    }

    @ParameterizedTest
    @MethodSource("withFundamental")
    void thdIsTheReferences(ReferenceRow row) {
        assertThat(Values.value(measured(row), WaveformQuantity.THD) / 100)
                .isCloseTo(row.number("THD_F all harmonics"), within(RECORD));
    }

    /** Even harmonics over all: sqrt(sum of even h_k² / sum of all h_k²). */
    @ParameterizedTest
    @MethodSource("withFundamental")
    void halfWaveResidueIsTheShareOfTheEvenHarmonics(ReferenceRow row) {
        double even = 0;
        double all = 0;
        for (int k = 1; k <= 15; k++) {
            double square = Math.pow(row.number("h" + k + " cosine series"), 2);
            all += square;
            even += k % 2 == 0 ? square : 0;
        }
        assertThat(Values.value(measured(row), WaveformQuantity.HALF_WAVE_RESIDUE) / 100)
                .isCloseTo(Math.sqrt(even / all), within(1e-6));
    }

    /** An even power of a cosine repeats itself twice a cycle, and a Chebyshev polynomial of order n makes harmonic n alone. */
    @ParameterizedTest
    @MethodSource("withoutFundamental")
    void aWaveWithoutTheExpectedFundamentalIsRefused(ReferenceRow row) {
        DoubleUnaryOperator polynomial = polynomial(row.text("polynomial in x = A cos t"));
        TestRecord record = TestRecord.of(p -> polynomial.applyAsDouble(Math.cos(2 * Math.PI * p)))
                .noisy(1e-4, 0, 5);
        assertThat(record.measured().doubts())
                .extracting(Doubt::code, Doubt::severity)
                .contains(tuple(DoubtCode.NO_FUNDAMENTAL, Severity.REFUSAL));
    }

    static Stream<ReferenceRow> withoutFundamental() {
        return rows().filter(row -> row.number("h1 cosine series") == 0);
    }
}
