package clipwitness.report.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.fixture.ExampleDevices;
import clipwitness.fixture.ExampleJob;
import clipwitness.fixture.ResultsReadBack;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.Remark;
import clipwitness.reason.SourceRemark;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Traced devices, their pairs and their predictions as results: V = 45 mV ln(1 + I / 2.5 nA) twice, and 470 Ω. */
class DevicesResultsTest {
    private static final JobResults RESULTS = results();

    private static JobResults results() {
        JobResults good = ExampleJob.good().results();
        return new JobResults(
                good.job(),
                good.inputsDigest(),
                List.of(),
                List.of(),
                List.of(),
                ExampleDevices.of(
                        List.of(
                                ExampleDevices.diode("D1", 4e-3, 23),
                                ExampleDevices.diode("D2", 0, 28),
                                ExampleDevices.resistor("R1")),
                        List.of(predicted(), refused())),
                List.of());
    }

    private static StatePrediction predicted() {
        Measured ratio = Measured.withNoise(0.2, Unit.ONE, 0.01);
        return new StatePrediction(
                        "new",
                        ExampleJob.condition(100),
                        Optional.of(Remark.of(SourceRemark.PATHS)),
                        List.of(
                                new Prediction("clipUp", OptionalInt.empty(), volts(0.6, 0.003), volts(0.61, 0.004)),
                                new Prediction("harmonic", OptionalInt.of(3), volts(-20, 0.3), volts(-21, 0.4))),
                        Optional.empty(),
                        true)
                .with(new StatePrediction.Paths(ratio, ratio, ratio, ratio, 0.01, 1, true));
    }

    private static StatePrediction refused() {
        return new StatePrediction(
                "original",
                ExampleJob.condition(50),
                Optional.empty(),
                List.of(new Prediction(
                        "clipUp",
                        OptionalInt.empty(),
                        Measured.refused(Unit.VOLT, DeviceReason.SOURCE_UNKNOWN),
                        volts(0.61, 0.004))),
                Optional.empty(),
                false);
    }

    private static Measured volts(double value, double uncertainty) {
        return Measured.withNoise(value, Unit.VOLT, uncertainty);
    }

    private static CSVRecord row(String section, String quantity) throws IOException {
        return rows().stream()
                .filter(r ->
                        r.get("section").equals(section) && r.get("quantity").equals(quantity))
                .findFirst()
                .orElseThrow();
    }

    private static List<CSVRecord> rows() throws IOException {
        String table = new String(ResultsCsv.bytes(RESULTS), StandardCharsets.UTF_8);
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(table))
                .getRecords();
    }

    @Test
    void theyReadBackFromTheDocumentAsTheyWere() {
        ResultsReadBack.compare(ResultsJson.bytes(RESULTS, "test"), RESULTS, "test");
    }

    /** 45 mV ln(1 + 400,000) = 580.47 mV; a decade 45 mV ln 10 = 103.62 mV. */
    @Test
    void aDiodeHasItsVoltagesAndItsFitInTheTable() throws IOException {
        CSVRecord forward = row("junction", "D1 forwardVoltage at 1 mA");
        assertThat(Double.parseDouble(forward.get("value"))).isCloseTo(0.58047, within(0.0021)); // half the gap of 4 mV
        assertThat(forward.get("unit")).isEqualTo("V");
        assertThat(forward.get("file")).isEqualTo("tracer/D1.csv");
        assertThat(Double.parseDouble(row("junction", "D2 decadeSlope").get("value")))
                .isCloseTo(0.10362, within(1e-4));
        assertThat(Double.parseDouble(row("junction", "D2 saturationCurrent").get("value")))
                .isCloseTo(2.5e-9, within(0.1e-9));
        assertThat(Double.parseDouble(row("junction", "D1 retraceGap").get("value")))
                .isCloseTo(4e-3, within(1e-4));
    }

    @Test
    void aResistorHasItsVoltageAndTheReasonWhyItHasNoFit() throws IOException {
        assertThat(Double.parseDouble(
                        row("junction", "R1 forwardVoltage at 1 mA").get("value")))
                .isCloseTo(0.47, within(1e-6));
        CSVRecord none = row("junction", "R1 saturationCurrent");
        assertThat(none.get("value")).isEmpty();
        assertThat(none.get("reason")).contains("resistor");
        assertThat(rows()).noneMatch(r -> r.get("quantity").equals("R1 ideality"));
    }

    @Test
    void aPairHasBothOfItsMismatches() throws IOException {
        assertThat(row("pair", "D1 D2 mismatch").get("unit")).isEqualTo("V");
        assertThat(Double.parseDouble(row("pair", "D1 D2 mismatchAt1mA").get("value")))
                .isNotNegative();
    }

    @Test
    void aPredictionStandsBesideTheMeasuredFigureUnderItsCondition() throws IOException {
        CSVRecord predicted = row("prediction", "predicted clipUp");
        assertThat(List.of(
                        predicted.get("state"),
                        predicted.get("gainPercent"),
                        predicted.get("value"),
                        predicted.get("unit"),
                        predicted.get("expandedUncertainty")))
                .containsExactly("new", "100.0", "0.6", "V", "0.006");
        CSVRecord measured = row("prediction", "measured clipUp");
        assertThat(List.of(measured.get("value"), measured.get("expandedUncertainty")))
                .containsExactly("0.61", "0.008");
        assertThat(row("prediction", "predicted harmonic").get("order")).isEqualTo("3");
        assertThat(rows())
                .filteredOn(r -> r.get("state").equals("original"))
                .extracting(
                        r -> r.get("quantity"),
                        r -> r.get("value").isEmpty(),
                        r -> r.get("reason").isEmpty())
                .containsExactly(tuple("predicted clipUp", true, false), tuple("measured clipUp", false, true));
    }
}
