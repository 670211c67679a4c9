package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.result.Decision;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class ToleranceTest {
    /** JCGM 106:2012 and ILAC-G8:09/2019, guard band as wide as U; see the README beside the fixture. */
    @TestFactory
    List<DynamicTest> decisionsAndProbabilitiesOfJcgm106() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        try (InputStream in = ToleranceTest.class.getResourceAsStream("/clipwitness/compare/decision-rules.csv")) {
            CSVFormat format = CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get();
            for (CSVRecord r : format.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                tests.add(DynamicTest.dynamicTest(r.get("id") + " " + r.get("description"), () -> check(r)));
            }
        }
        assertThat(tests).hasSize(26);
        return tests;
    }

    private static void check(CSVRecord r) {
        Tolerance tolerance = new Tolerance(
                number(r.get("lower limit TL"), Double.NEGATIVE_INFINITY),
                number(r.get("upper limit TU"), Double.POSITIVE_INFINITY));
        Measured.Value value =
                value(Double.parseDouble(r.get("value y")), Double.parseDouble(r.get("standard uncertainty u")));
        assertThat(tolerance.conformanceProbability(value))
                .isCloseTo(Double.parseDouble(r.get("conformance probability")), within(1e-12));
        if (Double.parseDouble(r.get("k")) == 2) {
            assertThat(tolerance.decide(value).name().toLowerCase(Locale.ROOT)).isEqualTo(r.get("three-way w=U"));
        }
    }

    @Test
    void anUpperBoundCannotFailAnUpperLimit() {
        assertThat(Tolerance.atMost(-32).decide(value(-29, 1))).isEqualTo(Decision.FAIL);
        assertThat(Tolerance.atMost(-32).decide(value(-29, 1).asUpperBound())).isEqualTo(Decision.UNDECIDED);
        assertThat(Tolerance.atMost(-27).decide(value(-29, 1).asUpperBound())).isEqualTo(Decision.PASS);
    }

    @Test
    void limitsThatAreNoNumbersAreRefused() {
        assertThatThrownBy(() -> Tolerance.within(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("limits must rise but are NaN and NaN");
    }

    private static double number(String text, double otherwise) {
        return text.isEmpty() ? otherwise : Double.parseDouble(text);
    }

    private static Measured.Value value(double y, double u) {
        return Measured.of(y, Unit.DECIBEL, new Contribution(Source.NOISE, u));
    }
}
