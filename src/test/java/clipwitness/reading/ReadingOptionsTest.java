package clipwitness.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import clipwitness.capture.CurveTable;
import clipwitness.capture.Export;
import clipwitness.capture.TimeRecord;
import clipwitness.fault.InputException;
import clipwitness.fixture.CurveChannels;
import clipwitness.fixture.Said;
import clipwitness.quantity.ColumnUnits;
import clipwitness.quantity.Unit;
import clipwitness.words.Speech;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the user says settles what the file leaves open, and wins over what it says. */
class ReadingOptionsTest {
    private static final OptionalDouble OPEN = OptionalDouble.empty();

    @TempDir
    private Path folder;

    @Test
    void intervalAndUnitSettleABareColumn() throws IOException, InputException {
        ReadingOptions options =
                new ReadingOptions(OptionalDouble.of(2e-6), Optional.of(ColumnUnits.of(Unit.AMPERE)), OPEN);
        TimeRecord record = (TimeRecord) read("0.5\n-0.5\n", options);
        assertThat(record.sampleInterval()).isEqualTo(2e-6);
        assertThat(record.channels().get(0).unit()).contains(Unit.AMPERE);
        assertThat(record.doubts()).isEmpty();
        assertThat(record.evidence().stream().map(Speech.ENGLISH::text))
                .contains(
                        "sample interval 2.00000\u00a0µs as the user states it",
                        "channel “column 1” in A, as the user states it");
    }

    @Test
    void aScaleTurnsCountsIntoVolts() throws IOException, InputException {
        ReadingOptions options = new ReadingOptions(OPEN, Optional.empty(), OptionalDouble.of(0.004));
        Export export = read("Sampling period,2e-6\nUnit,V\nCH1\n3\n-250\n", options);
        assertThat(export.channels().get(0).unit()).contains(Unit.VOLT);
        assertThat(export.channels().get(0).samples().at(1)).isEqualTo(-1);
        assertThat(export.doubts()).isEmpty();
    }

    @Test
    void theUnitSettlesOnlyTheChannelsThatStateNone() throws IOException, InputException {
        ReadingOptions options = new ReadingOptions(OPEN, Optional.of(ColumnUnits.of(Unit.VOLT)), OPEN);
        Export export = read("Time (ms),CH1,CH2 (mA)\n0,1,2\n1,2,3\n", options);
        assertThat(export.channels().get(0).unit()).contains(Unit.VOLT);
        assertThat(export.channels().get(1).unit()).contains(Unit.AMPERE);
    }

    @Test
    void theUserWinsOverTheFile() throws IOException, InputException {
        ReadingOptions options = new ReadingOptions(OptionalDouble.of(1), Optional.empty(), OptionalDouble.of(0.001));
        TimeRecord record = (TimeRecord) read("Time (s),CH1 (V)\n0,100\n1e-3,200\n2e-3,300\n", options);
        assertThat(record.sampleInterval()).isEqualTo(1);
        assertThat(record.evidence().stream().map(Speech.ENGLISH::text))
                .contains(
                        "sample interval 1.00000\u00a0s as the user states it; the time stamps give 1.00000\u00a0ms",
                        "channel “CH1” in V, 0.001 a count, as the user states it; the unit or scale that the file"
                                + " states is not used");
        assertThat(record.channels().get(0).samples().at(0)).isEqualTo(0.1);
        assertThat(record.doubts().stream().map(Said::doubt))
                .containsExactly("The sample interval is 1.00000\u00a0s as the user states it, but the time stamps give"
                        + " 1.00000\u00a0ms: one of them is wrong. The column interval of captures.csv, or the option"
                        + " --interval of look, may stay empty here.");
    }

    @Test
    void anIntervalThatSettlesTheUnitOfTheStampsLeavesNoDoubt() throws IOException, InputException {
        ReadingOptions options = new ReadingOptions(OptionalDouble.of(0.002), Optional.empty(), OPEN);
        for (String head : List.of("Time,CH1 (V)\n", "")) {
            TimeRecord record = (TimeRecord) read(head + "10,0.5\n12,0.2\n14,0.3\n", options);
            assertThat(record.sampleInterval()).isEqualTo(0.002);
            assertThat(record.start()).isEqualTo(0.01);
            assertThat(record.doubts().stream().map(Said::doubt)).noneMatch(t -> t.contains("time"));
        }
    }

    @Test
    void anIntervalThatAgreesWithThePreambleLeavesNoDoubt() throws IOException, InputException {
        String text = "Sampling rate: 500 kHz\nCH1 (V)\n0.5\n-0.5\n";
        ReadingOptions same = new ReadingOptions(OptionalDouble.of(2e-6), Optional.empty(), OPEN);
        ReadingOptions other = new ReadingOptions(OptionalDouble.of(2e-3), Optional.empty(), OPEN);
        assertThat(read(text, same).doubts()).isEmpty();
        assertThat(Said.doubt(read(text, other).doubts().get(0)))
                .startsWith(
                        "The sample interval is 2.00000\u00a0ms as the user states it, but 'Sampling rate' on line 1"
                                + " gives 2.00000\u00a0µs: one of them is wrong.");
    }

    @Test
    void aScaleMakesVoltsAndAmperesOfACurveWithoutUnits() throws IOException, InputException {
        ReadingOptions options = new ReadingOptions(OPEN, Optional.empty(), OptionalDouble.of(0.001));
        CurveTable curve = (CurveTable) read("V,I\n60,0.007\n72,0.01\n76,0.02\n", options);
        assertThat(CurveChannels.in(curve, Unit.VOLT).samples().at(0)).isEqualTo(0.06);
        assertThat(CurveChannels.in(curve, Unit.AMPERE).samples().at(2)).isEqualTo(0.00002);
    }

    @Test
    void aUnitForEachColumnMakesACurveOfColumnsWithoutHeadings() throws IOException, InputException {
        String text = "400\t8\n420\t15\n410\t12\n";
        CurveTable curve = (CurveTable) read(text, units("mV,mA"));
        assertThat(CurveChannels.in(curve, Unit.VOLT).samples().at(1)).isEqualTo(0.42);
        assertThat(CurveChannels.in(curve, Unit.AMPERE).samples().at(2)).isEqualTo(0.012);
        assertThat(curve.doubts()).isEmpty();
        assertThat(curve.evidence().stream().map(Speech.ENGLISH::text))
                .contains("channel “column 2” in mA, as the user states it");
    }

    @Test
    void aUnitOfTimeAmongThemMakesARecord() throws IOException, InputException {
        TimeRecord record = (TimeRecord) read("20,0.5\n40,-0.5\n60,0.25\n", units("us,mV"));
        assertThat(record.sampleInterval()).isEqualTo(20e-6);
        assertThat(record.channels().get(0).samples().at(1)).isEqualTo(-0.0005);
        assertThat(record.doubts()).isEmpty();
    }

    @Test
    void aUnitForEachChannelLeavesTheTimeAlone() throws IOException, InputException {
        TimeRecord record = (TimeRecord) read("Time (ms);CH1;CH2\n0;1,5;2\n1;2,5;3\n", units("mV A"));
        assertThat(record.sampleInterval()).isEqualTo(0.001);
        assertThat(record.channels().get(0).samples().at(0)).isEqualTo(0.0015);
        assertThat(record.channels().get(1).unit()).contains(Unit.AMPERE);
    }

    @Test
    void aUnitWithPrefixHoldsForAllChannels() throws IOException, InputException {
        Export export = read("Time (ms),CH1,CH2\n0,1,2\n1,2,3\n", units("mV"));
        assertThat(export.channels().get(1).samples().at(1)).isEqualTo(0.003);
        assertThat(export.channels().get(1).unit()).contains(Unit.VOLT);
    }

    @Test
    void moreUnitsThanColumnsAreRefused() {
        assertThatExceptionOfType(InputException.class)
                .isThrownBy(() -> read("Time (ms),CH1\n0,1.5\n1,2.5\n", units("mV,mA,V")))
                .withMessageEndingWith("3 units are stated, but it has 2 columns of numbers, 1 of them channels."
                        + " State one unit for all channels, or one for each column");
    }

    @Test
    void aStatedIntervalTellsRoundedStampsFromAChannel() throws IOException, InputException {
        ReadingOptions options = new ReadingOptions(OptionalDouble.of(0.4e-3), Optional.empty(), OPEN);
        String text = "0,000;0,5\n0,000;0,2\n0,001;-0,5\n0,001;-0,2\n0,002;0,5\n0,002;0,2\n0,002;0,1\n0,003;-0,5\n";
        TimeRecord record = (TimeRecord) read(text, options);
        assertThat(record.sampleInterval()).isEqualTo(0.4e-3);
        assertThat(record.channels()).hasSize(1);
    }

    @Test
    void figuresOutOfRangeAreOurMistake() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ReadingOptions(OptionalDouble.of(Double.NaN), Optional.empty(), OPEN))
                .withMessage("interval must be above 0 s but is NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ReadingOptions(OPEN, Optional.empty(), OptionalDouble.of(0)))
                .withMessage("scale must be finite and not 0 but is 0.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ReadingOptions(OPEN, Optional.of(ColumnUnits.of(Unit.SECOND)), OPEN))
                .withMessage("unit must be V or A but is s");
    }

    private static ReadingOptions units(String text) {
        return new ReadingOptions(OPEN, ColumnUnits.parse(text), OPEN);
    }

    private Export read(String text, ReadingOptions options) throws IOException, InputException {
        return ExportReader.read(Files.writeString(folder.resolve("x.csv"), text), "x.csv", options);
    }
}
