package clipwitness.job;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Condition;
import clipwitness.fault.InputException;
import clipwitness.fixture.TestJob;
import clipwitness.quantity.ColumnUnits;
import clipwitness.quantity.Unit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A table that is sound, in the forms in which editors and spreadsheets write it. */
class CapturesTableTest {
    private static final String SETTINGS = "settings: {noon: all at noon, bright: tone up}\n";

    @TempDir
    Path folder;

    private TestJob job;

    @BeforeEach
    void soundJob() throws IOException {
        job = TestJob.in(folder);
        Files.writeString(folder.resolve("sub/a.csv"), "0,0\n");
    }

    private List<CaptureRow> rows(String table) throws IOException, InputException {
        return job.table(table).read().captures();
    }

    @Test
    void everyColumn() throws IOException, InputException {
        job.sheet(SETTINGS);
        String table = "note,acquisition,coupling,instrument,date,temperature,device,scale,unit,interval,output-probe,"
                + "input-probe,input-file,output,input,run,setting,level,frequency,gain,kind,state,file\n"
                + "\"warm, but steady\",Average 16,AC,scope,2026-05-03,22.5,D1,20 mV,V,1 us,10,0.5,original.csv,CH2,1,2,"
                + "bright,50 mV,2 kHz,62.5,response,received,sub\\a.csv\n";
        assertThat(rows(table))
                .containsExactly(new CaptureRow(
                        2,
                        "sub/a.csv",
                        Optional.of("received"),
                        CaptureKind.RESPONSE,
                        new Condition(
                                OptionalDouble.of(62.5),
                                OptionalDouble.of(2000),
                                OptionalDouble.of(0.05),
                                Optional.of("bright")),
                        2,
                        Optional.of("1"),
                        Optional.of("CH2"),
                        Optional.of("original.csv"),
                        0.5,
                        10,
                        OptionalDouble.of(1e-6),
                        Optional.of(ColumnUnits.of(Unit.VOLT)),
                        OptionalDouble.of(0.02),
                        Optional.of("D1"),
                        OptionalDouble.of(22.5),
                        Optional.of(LocalDate.of(2026, 5, 3)),
                        Optional.of("scope"),
                        Optional.of("ac"),
                        Optional.of("average 16"),
                        "warm, but steady"));
    }

    @Test
    void aSilentRowTakesStimulusAndFirstSettingOfTheSheet() throws IOException, InputException {
        job.sheet(SETTINGS);
        CaptureRow row =
                rows("file,state,kind\nreceived.csv,received,waveform\n").get(0);
        assertThat(row.condition())
                .isEqualTo(new Condition(
                        OptionalDouble.empty(), OptionalDouble.of(1000), OptionalDouble.of(0.1), Optional.of("noon")));
        assertThat(row.run()).isEqualTo(1);
        assertThat(row.inputProbe()).isEqualTo(1);
        assertThat(row.outputProbe()).isEqualTo(1);
        assertThat(row.note()).isEmpty();
        assertThat(row.unit()).isEmpty();
        assertThat(row.coupling()).isEmpty();
    }

    @Test
    void noiseAndJunctionsHaveNoStimulus() throws IOException, InputException {
        List<CaptureRow> rows = rows("""
                file,state,kind,gain,frequency,level,device
                received.csv,received,noise,50,1 kHz,1 V,
                original.csv,,Junction,,,,D1
                """);
        assertThat(rows.get(0).condition())
                .isEqualTo(new Condition(
                        OptionalDouble.of(50), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty()));
        assertThat(rows.get(1).condition())
                .isEqualTo(new Condition(
                        OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty()));
        assertThat(rows.get(1).kind()).isEqualTo(CaptureKind.JUNCTION);
        assertThat(rows.get(1).state()).isEmpty();
        assertThat(rows.get(1).device()).contains("D1");
    }

    @Test
    void aTableOfJunctionsNeedsNoStates() throws IOException, InputException {
        assertThat(rows("file,kind,device\noriginal.csv,junction,D1\n")).hasSize(1);
    }

    @Test
    void plainNumbersAreInSiUnits() throws IOException, InputException {
        CaptureRow row = rows("""
                file,state,kind,gain,frequency,level,interval,scale,temperature,unit
                received.csv,received,waveform,50 %,440,0.05,2e-6,0.003 A,21 °C,A
                """).get(0);
        assertThat(row.condition().gainPercent()).hasValue(50);
        assertThat(row.condition().frequency()).hasValue(440);
        assertThat(row.condition().level()).hasValue(0.05);
        assertThat(row.interval()).hasValue(2e-6);
        assertThat(row.unit()).contains(ColumnUnits.of(Unit.AMPERE));
        assertThat(row.scale()).hasValue(0.003);
        assertThat(row.temperature()).hasValue(21);
    }

    @ParameterizedTest
    @ValueSource(strings = {"sample", "Sample", "average 64", "average64", "peak-detect"})
    void acquisitionForms(String form) throws IOException, InputException {
        CaptureRow row = rows("file,state,kind,acquisition\nreceived.csv,received,waveform," + form + "\n")
                .get(0);
        assertThat(row.acquisition())
                .hasValueSatisfying(a -> assertThat(a).isIn("sample", "average 64", "peak-detect"));
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void separatorsOfSpreadsheets(String separator) throws IOException, InputException {
        assertThat(rows(TestJob.TABLE.replace(",", separator)))
                .extracting(CaptureRow::file)
                .containsExactly("received.csv", "original.csv");
    }

    @Test
    void aRowHasTheNumberOfItsLine() throws IOException, InputException {
        List<CaptureRow> rows = rows("""

                 file , state,kind , note

                ,,,
                received.csv,received,waveform,"two
                lines"
                original.csv,original,waveform,
                """);
        assertThat(rows).extracting(CaptureRow::row).containsExactly(5, 7);
        assertThat(rows.get(0).note()).isEqualTo("two\nlines");
    }

    @Test
    void aNameKeepsNoTabNoLineEndAndNoEscape() throws IOException, InputException {
        List<CaptureRow> rows = rows("""
                file,state,kind,device,output
                received.csv,received,waveform,"D\t1\n(red)","CH\u001b[31m2"
                """);
        assertThat(rows.get(0).device()).contains("D 1 (red)");
        assertThat(rows.get(0).output()).contains("CH [31m2");
    }

    @Test
    void linesOfOtherSystems() throws IOException, InputException {
        for (String end : List.of("\r\n", "\r")) {
            assertThat(rows(TestJob.TABLE.replace("\n", end)))
                    .extracting(CaptureRow::row)
                    .containsExactly(2, 3);
        }
    }

    @Test
    void encodingsOfSpreadsheets() throws IOException, InputException {
        String table = "file,state,kind,note\nreceived.csv,received,waveform,21 °C\n";
        for (byte[] bytes : List.of(
                table.getBytes(StandardCharsets.UTF_8),
                ("\ufeff" + table).getBytes(StandardCharsets.UTF_8),
                ("\ufeff" + table).getBytes(StandardCharsets.UTF_16LE),
                table.getBytes(StandardCharsets.ISO_8859_1))) {
            Files.write(folder.resolve("captures.csv"), bytes);
            assertThat(job.read().captures().get(0).note()).isEqualTo("21 °C");
        }
    }

    @Test
    void oneExportMayServeTwoRows() throws IOException, InputException {
        assertThat(rows("file,state,kind,output\nreceived.csv,received,waveform,1\nreceived.csv,original,waveform,2\n"))
                .hasSize(2);
    }

    @Test
    void anInstrumentThatTheSheetDoesNotListIsNotRefused() throws IOException, InputException {
        job.sheet("bench: {instruments: [{name: scope}]}\n");
        assertThat(rows("file,state,kind,instrument\nreceived.csv,received,waveform,borrowed meter\n")
                        .get(0)
                        .instrument())
                .contains("borrowed meter");
    }

    @Test
    void inputAndOutputOfOneNameAreTwoChannelsInTwoFiles() throws IOException, InputException {
        CaptureRow row = rows("""
                file,state,kind,input,output,input-file
                received.csv,received,waveform,CH1,CH1,original.csv
                """).get(0);
        assertThat(row.inputFile()).contains("original.csv");
    }
}
