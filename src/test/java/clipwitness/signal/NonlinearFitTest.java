package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** NIST Statistical Reference Datasets, nonlinear regression: certified to eleven digits. */
class NonlinearFitTest {
    private static List<ReferenceRow> certified(String set) {
        return ReferenceRow.of(NonlinearFitTest.class, "nist-strd/certified-nonlinear.csv")
                .filter(r -> r.text("dataset").equals(set))
                .toList();
    }

    private static Stream<ReferenceRow> parameters(String set) {
        return certified(set).stream().filter(r -> r.text("quantity").matches("b\\d"));
    }

    private static NonlinearFit fit(String set, int start) {
        List<ReferenceRow> points = ReferenceRow.of(NonlinearFitTest.class, "nist-strd/" + set + ".csv")
                .toList();
        double[] x = points.stream().mapToDouble(r -> r.number("x")).toArray();
        double[] y = points.stream().mapToDouble(r -> r.number("y")).toArray();
        double[] ones = new double[x.length];
        Arrays.fill(ones, 1);
        double[] from =
                parameters(set).mapToDouble(r -> r.number("start " + start)).toArray();
        NonlinearFit.Outcome outcome = NonlinearFit.of(NistModel.of(set), x, y, ones, from);
        assertThat(outcome).isInstanceOf(NonlinearFit.Outcome.Found.class);
        return ((NonlinearFit.Outcome.Found) outcome).fit();
    }

    /** Relative tolerance of the reference's note: 1e-6, for Lanczos3, whose residuals are of five digits, 1e-4. */
    @ParameterizedTest
    @CsvSource({
        "Misra1a, 1, 1e-6", "Misra1a, 2, 1e-6", "Chwirut2, 1, 1e-6", "Chwirut2, 2, 1e-6", "DanWood, 1, 1e-6",
        "DanWood, 2, 1e-6", "Lanczos3, 1, 1e-4", "Lanczos3, 2, 1e-4", "Gauss1, 1, 1e-6", "Gauss1, 2, 1e-6",
        "Thurber, 1, 1e-6", "Thurber, 2, 1e-6", "MGH09, 1, 1e-6", "MGH09, 2, 1e-6"
    })
    void reachesTheCertifiedValuesFromBothStarts(String set, int start, double tolerance) {
        NonlinearFit fit = fit(set, start);
        List<ReferenceRow> wanted = parameters(set).toList();
        for (int k = 0; k < wanted.size(); k++) {
            double value = wanted.get(k).number("certified value");
            double deviation = wanted.get(k).number("certified standard deviation");
            assertThat(fit.parameter(k)).isCloseTo(value, within(tolerance * Math.abs(value)));
            assertThat(fit.standardUncertainty(k)).isCloseTo(deviation, within(tolerance * deviation));
        }
        for (ReferenceRow row : certified(set)) {
            double value = row.number("certified value");
            switch (row.text("quantity")) {
                case "RSS" ->
                    assertThat(fit.reducedChiSquare() * fit.degreesOfFreedom())
                            .isCloseTo(value, within(tolerance * value));
                case "RSD" -> assertThat(Math.sqrt(fit.reducedChiSquare())).isCloseTo(value, within(tolerance * value));
                case "DOF" -> assertThat(fit.degreesOfFreedom()).isEqualTo((int) value);
                default -> {}
            }
        }
    }

    /** Two parameters of which only the sum matters. */
    @Test
    void pointsThatDoNotDetermineTheCurveAreSaidToBeSo() {
        NonlinearFit.Regression sum = (x, p, gradient) -> {
            gradient[0] = x;
            gradient[1] = x;
            return (p[0] + p[1]) * x;
        };
        double[] x = IntStream.range(1, 6).asDoubleStream().toArray();
        double[] ones = {1, 1, 1, 1, 1};
        assertThat(NonlinearFit.of(sum, x, x, ones, new double[] {0.3, 0.3}))
                .isEqualTo(new NonlinearFit.Outcome.Failed("the points do not determine the curve"));
    }

    /** Least squares of a mean: a point of a tenth of the uncertainty weighs a hundred times as much. */
    @Test
    void pointsWeighByTheirUncertainty() {
        NonlinearFit.Regression mean = (x, p, gradient) -> {
            gradient[0] = 1;
            return p[0];
        };
        NonlinearFit.Outcome outcome = NonlinearFit.of(
                mean, new double[] {0, 0}, new double[] {0, 101}, new double[] {1, 0.1}, new double[] {7});
        assertThat(((NonlinearFit.Outcome.Found) outcome).fit().parameter(0)).isCloseTo(100, within(1e-9));
    }
}
