package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The four-parameter sine fit of IEEE Std 1057 against solutions computed in extended precision (sine-fit-results.csv). */
class SineFitTest {
    private static final Percentage NINE_DIGITS = Percentage.withPercentage(1e-7);

    @TestFactory
    Stream<DynamicTest> reachesTheLeastSquaresSolution() {
        List<Map<String, String>> cases = ReferenceTable.read(getClass(), "sine-fit.csv");
        List<Map<String, String>> results = ReferenceTable.read(getClass(), "sine-fit-results.csv");
        return java.util.stream.IntStream.range(0, cases.size())
                .mapToObj(i ->
                        DynamicTest.dynamicTest(cases.get(i).get("case"), () -> check(cases.get(i), results.get(i))));
    }

    private static void check(Map<String, String> given, Map<String, String> expected) {
        double rate = number(given, "sample rate");
        Samples record = record(given);
        assertThat(record.at(0)).isCloseTo(number(expected, "x[0]"), within(1e-15));
        double start = FundamentalSearch.near(record, number(given, "frequency") / rate)
                .orElseThrow();
        JointFit fit = JointFit.of(List.of(record), start, 1);
        HarmonicFit sine = fit.channels().get(0);
        assertThat(sine.amplitude(1)).isCloseTo(number(expected, "fitted amplitude"), NINE_DIGITS);
        assertThat(fit.cyclesPerSample() * rate).isCloseTo(number(expected, "fitted frequency"), NINE_DIGITS);
        assertThat(sine.mean()).isCloseTo(number(expected, "fitted dc"), within(1e-9 * sine.amplitude(1)));
        double phase = sine.phase(1) + 2 * Math.PI * sine.cyclesAt(0) + Math.PI / 2;
        double difference = Math.IEEEremainder(phase - number(expected, "fitted phase at n=0"), 2 * Math.PI);
        assertThat(difference).isCloseTo(0, within(3e-9));
        assertThat(residualRms(record, sine))
                .isCloseTo(number(expected, "residual rms sqrt(RSS/N)"), Percentage.withPercentage(1e-4));
    }

    private static double residualRms(Samples record, HarmonicFit fit) {
        double sum = 0;
        for (int n = 0; n < record.size(); n++) {
            sum += Math.pow(record.at(n) - fit.at(fit.cyclesAt(n)), 2);
        }
        return Math.sqrt(sum / record.size());
    }

    private static Samples record(Map<String, String> given) {
        Random random = new Random(Long.parseLong(given.get("seed")));
        double[] x = new double[Integer.parseInt(given.get("samples"))];
        double angle = 2 * Math.PI * number(given, "frequency") / number(given, "sample rate");
        double step = number(given, "LSB");
        for (int n = 0; n < x.length; n++) {
            x[n] = number(given, "amplitude") * Math.sin(angle * n + number(given, "phase of sine at n=0"))
                    + number(given, "dc")
                    + number(given, "noise sigma") * random.nextGaussian();
            x[n] = step > 0 ? Math.rint(x[n] / step) * step : x[n];
        }
        return Samples.of(x);
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
