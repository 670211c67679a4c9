package clipwitness.job.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fault.InputException;
import clipwitness.fixture.DamagedArchive;
import clipwitness.fixture.TestJob;
import clipwitness.job.Attachment;
import clipwitness.job.Bench;
import clipwitness.job.Clipper;
import clipwitness.job.Instrument;
import clipwitness.job.JobSheet;
import clipwitness.job.Paper;
import clipwitness.job.Shop;
import clipwitness.job.Stimulus;
import clipwitness.quantity.LimitQuantity;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JobReaderTest {
    @TempDir
    Path outside;

    private Path folder;
    private TestJob job;

    @BeforeEach
    void soundJob() throws IOException {
        folder = Files.createDirectory(outside.resolve("job"));
        job = TestJob.in(folder);
    }

    @Test
    void aSheetNeedsOnlyReportAndStates() throws IOException, InputException {
        job.write("job.yaml", "report: {number: B-1, date: 2026-05-04}\nstates: {received: {role: before}}\n")
                .table("file,kind\n");
        JobSheet sheet = job.read().sheet();
        assertThat(job.read().folder()).isEqualTo(folder);
        assertThat(job.read().captures()).isEmpty();
        assertThat(sheet.report().title()).isEmpty();
        assertThat(sheet.report().revision()).isEmpty();
        assertThat(sheet.report().template()).isEqualTo("customer");
        assertThat(sheet.report().language()).isEqualTo("en");
        assertThat(sheet.report().paper()).isEqualTo(Paper.A4);
        assertThat(sheet.report().attach()).isEqualTo(EnumSet.allOf(Attachment.class));
        assertThat(sheet.shop()).isEqualTo(new Shop("", "", Optional.empty(), ""));
        assertThat(sheet.stimulus()).isEqualTo(new Stimulus("sine", OptionalDouble.empty(), OptionalDouble.empty()));
        assertThat(sheet.states().get(0).label()).isEqualTo("received");
        assertThat(sheet.limits().isDefault(LimitQuantity.NULL_DEPTH)).isTrue();
        assertThat(sheet.limits().of(LimitQuantity.NULL_DEPTH)).isEqualTo(-32);
        assertThat(sheet.rails()).isEmpty();
        assertThat(sheet.clipper()).isEmpty();
        assertThat(sheet.photos()).isEmpty();
    }

    /** Defaults: vertical accuracy 3 %, knob 1 %, meter 0.5 %, bench 23 °C (the sheet then says nothing of it). */
    @Test
    void theBenchHasDefaults() throws InputException {
        Bench bench = job.read().sheet().bench();
        assertThat(bench.verticalAccuracy()).isEqualTo(0.03);
        assertThat(bench.knobRepeatability()).isEqualTo(0.01);
        assertThat(bench.meterAccuracy()).isEqualTo(0.005);
        assertThat(bench.temperature()).isEmpty();
        assertThat(bench.mains()).isEmpty();
        assertThat(bench.instruments()).isEmpty();
    }

    @Test
    void oneBeforeIsWhatTheOthersAreComparedWith() throws IOException, InputException {
        job.sheet("states:\n  new: {role: changed}\n  old: {role: before}\n").table("file,kind\n");
        assertThat(job.read().sheet().state("new").against()).contains("old");
        assertThat(job.read().sheet().state("old").against()).isEmpty();
    }

    /** A sine of 100 mV RMS has 141.4 mV peak; 200 mV from peak to peak are 100 mV peak. */
    @ParameterizedTest
    @CsvSource({
        "100 mV, 0.1",
        "100 mV rms, 0.1414213562373095",
        "100mVrms, 0.1414213562373095",
        "0.1 V RMS, 0.1414213562373095",
        "200 mV pp, 0.1",
        "200 mVpp, 0.1",
        "200 mV p-p, 0.1",
        "100 mV peak, 0.1",
        "100 mVpk, 0.1",
    })
    void aLevelIsAPeakUnlessRmsOrPeakToPeakFollows(String level, double peak) throws IOException, InputException {
        job.sheet("stimulus: {shape: Sine, level: " + level + "}\n");
        Stimulus stimulus = job.read().sheet().stimulus();
        assertThat(stimulus.shape()).isEqualTo("sine");
        assertThat(stimulus.level()).hasValueCloseTo(peak, within(1e-16));
    }

    @Test
    void asymmetryMayStandWithOrWithoutItsUnit() throws IOException, InputException {
        assertThat(job.sheet("limits: {asymmetry: 2.5}\n")
                        .read()
                        .sheet()
                        .limits()
                        .of(LimitQuantity.ASYMMETRY))
                .isEqualTo(2.5);
        assertThat(job.sheet("limits: {asymmetry: 2.5 %}\n")
                        .read()
                        .sheet()
                        .limits()
                        .of(LimitQuantity.ASYMMETRY))
                .isEqualTo(2.5);
    }

    @Test
    void aFeedbackClipperHasTwoResistances() throws IOException, InputException {
        job.sheet("clipper: {topology: feedback, input-resistance: 4.7 kohm, feedback-resistance: 1 Mohm}\n");
        Clipper clipper = job.read().sheet().clipper().orElseThrow();
        assertThat(clipper.topology()).isEqualTo(Clipper.Topology.FEEDBACK);
        assertThat(clipper.inputResistance()).hasValue(4700);
        assertThat(clipper.feedbackResistance()).hasValue(1e6);
        assertThat(clipper.outputGain()).isEmpty();
        assertThat(clipper.pairs()).isEmpty();
    }

    @Test
    void oneInstrumentAndOneAttachmentNeedNoList() throws IOException, InputException {
        job.sheet("report: {number: B-1, date: 2026-05-04, attach: sheet}\nbench: {instruments: scope}\n");
        assertThat(job.read().sheet().bench().instruments())
                .extracting(Instrument::name)
                .containsExactly("scope");
        assertThat(job.read().sheet().report().attach()).containsExactly(Attachment.SHEET);
        job.sheet("report: {number: B-1, date: 2026-05-04, attach: []}\nbench: {instruments: {name: scope}}\n");
        assertThat(job.read().sheet().bench().instruments())
                .extracting(Instrument::name)
                .containsExactly("scope");
        assertThat(job.read().sheet().report().attach()).isEmpty();
    }

    @Test
    void aRevisionSaysWhichReportItReplaces() throws IOException, InputException {
        job.sheet("report: {number: B-2, date: 2026-05-04, revision: 2, replaces: B-1}\n");
        assertThat(job.read().sheet().report().replaces()).contains("B-1");
        assertThat(job.read().sheet().report().revision()).hasValue(2);
    }

    @Test
    void anAnchorThatNobodyUsesDoesNoHarm() throws IOException, InputException {
        assertThat(job.sheet("customer: &c A customer\n").read().sheet().customer())
                .isEqualTo("A customer");
    }

    @Test
    void sheetAndTableAreFaultedTogether() throws IOException {
        job.sheet("customer: A\ndate: 2026-05-04\n").table("file,state,kind\nreceived.csv,new,waveform\n");
        assertThat(job.messages())
                .containsExactly(
                        "job.yaml, line 2, date: unknown key 'date'. The nearest known key is 'states'; known are report, shop,"
                                + " customer, unit, work, bench, stimulus, settings, states, limits, rails, readings, clipper"
                                + " and photos",
                        "captures.csv, line 2, state: unknown state 'new'. Write received or original");
    }

    @Test
    void aLongListOfKnownWordsIsCut() throws IOException {
        StringBuilder states = new StringBuilder("states:\n  received: {role: before}\n");
        for (int i = 1; i <= 40; i++) {
            states.append("  s").append(i).append(": {role: changed}\n");
        }
        job.sheet(states.toString()).table("file,state,kind\nreceived.csv,original,waveform\n");
        assertThat(job.messages())
                .singleElement()
                .asString()
                .startsWith("captures.csv, line 2, state: unknown state 'original'. Write received, s1, s2, ")
                .endsWith(", s38, s39, …");
    }

    @Test
    void moreFaultsThanAnybodyReadsAreCounted() throws IOException {
        StringBuilder table = new StringBuilder("file,state,kind\n");
        for (int row = 0; row < 600; row++) {
            table.append("received.csv,new").append(row).append(",waveform\n");
        }
        job.table(table.toString());
        assertThat(job.messages()).hasSize(501).last().isEqualTo("captures.csv: and 100 more. Correct these first");
    }

    @Test
    void aSheetThatCannotBeRead() throws IOException {
        try (FileSystem archive = DamagedArchive.of(outside.resolve("a.zip"), Map.of(), "job.yaml")) {
            assertThat(new TestJob(archive.getPath("/")).messages())
                    .containsExactly(
                            "job.yaml: the file could not be read. Check whether this user may read /job.yaml");
        }
    }

    @Test
    void aPictureThatCannotBeRead() throws IOException {
        job.sheet("shop: {logo: board.png}\n");
        Map<String, String> sound = Map.of(
                "job.yaml",
                Files.readString(folder.resolve("job.yaml")),
                "captures.csv",
                TestJob.TABLE,
                "received.csv",
                "0,0\n",
                "original.csv",
                "0,0\n");
        try (FileSystem archive = DamagedArchive.of(outside.resolve("a.zip"), sound, "board.png")) {
            assertThat(new TestJob(archive.getPath("/")).messages())
                    .containsExactly(
                            "job.yaml, line 1, shop.logo: 'board.png' could not be read. Check whether this user may read it");
        }
    }

    @Test
    void aFolderThatIsNotThere() {
        assertThat(new TestJob(folder.resolve("gone")).messages())
                .containsExactly(folder.resolve("gone")
                        + ": there is no such folder. Name the folder that holds job.yaml and captures.csv");
    }

    @Test
    void aSheetInThePlaceOfItsFolder() throws IOException {
        Path sheet = Files.writeString(folder.resolve("sheet.yaml"), "x");
        assertThat(new TestJob(sheet).messages())
                .containsExactly(
                        sheet + ": is a file, not a job folder. Name the folder that holds job.yaml and captures.csv");
    }

    @Test
    void aFolderWithoutASheet() throws IOException {
        Files.delete(folder.resolve("job.yaml"));
        assertThat(job.messages())
                .containsExactly("job.yaml: there is no such file in the job folder " + folder
                        + ". Write one; the README shows a first one");
    }

    @Test
    void aSheetUnderAnotherName() throws IOException {
        Files.move(folder.resolve("job.yaml"), folder.resolve("job.yml"));
        assertThat(job.messages())
                .containsExactly("job.yaml: there is no such file in the job folder " + folder
                        + ". Is 'job.yml' meant? Then rename it");
    }

    @Test
    void aCaptureThatIsNotThereIsNotMistakenForOneOfAnotherNumber() throws IOException {
        job.write("tone-050.csv", "0,0\n");
        job.table("file,state,kind\ntone-100.csv,original,waveform\nreceivd.csv,received,waveform\n");
        assertThat(job.messages())
                .anySatisfy(m -> assertThat(m)
                        .endsWith("there is no file 'tone-100.csv'. Paths count from the job folder; upper and lower "
                                + "case differ"))
                .anySatisfy(m -> assertThat(m).endsWith("there is no file 'receivd.csv'. Is 'received.csv' meant?"));
    }

    @Test
    void theFolderOfExportsIsNotTakenForTheTable() throws IOException {
        Files.delete(folder.resolve("captures.csv"));
        Files.createDirectories(folder.resolve("captures"));
        assertThat(job.messages()).singleElement().asString().doesNotContain("meant?");
    }

    @Test
    void aFolderWithoutATableIsFaultedTogetherWithItsSheet() throws IOException {
        job.sheet("limits: {level: 1}\n");
        Files.delete(folder.resolve("captures.csv"));
        assertThat(job.messages())
                .containsExactly(
                        "job.yaml, line 1, limits.level: '1' has no unit. Write a number, a space and the unit, for example"
                                + " 0.5 dB",
                        "captures.csv: there is no such file in the job folder " + folder
                                + ". Write one with the columns file, state and kind; the README shows a first one");
    }

    @Test
    void aSheetThatIsTooLarge() throws IOException {
        job.write("job.yaml", "work: " + "x".repeat(1 << 20));
        assertThat(job.messages())
                .containsExactly(
                        "job.yaml: the file has 1048582 bytes, and at most 1048576 are read. Check whether this is"
                                + " the right file");
    }

    @Test
    void aSheetThatIsNotUtf8() throws IOException {
        byte[] latin1 = "customer: A\nbench: {temperature: 21 °C}\n".getBytes(StandardCharsets.ISO_8859_1);
        Files.write(folder.resolve("job.yaml"), latin1);
        assertThat(job.messages())
                .containsExactly("job.yaml, line 2: a character is not UTF-8. Save the file as UTF-8");
    }

    @Test
    void aSheetWithAByteOrderMark() throws IOException, InputException {
        String sheet = "\ufeff" + Files.readString(folder.resolve("job.yaml"));
        for (var charset : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
            Files.write(folder.resolve("job.yaml"), sheet.getBytes(charset));
            assertThat(job.read().sheet().report().number()).isEqualTo("B-1");
        }
    }

    @Test
    void aLinkThatLeadsOutsideIsRefused() throws IOException {
        Path secret = Files.writeString(outside.resolve("secret.csv"), "1,2\n");
        Files.createSymbolicLink(folder.resolve("link.csv"), secret);
        assertThat(job.table("file,state,kind\nlink.csv,received,waveform\n").messages())
                .containsExactly(
                        "captures.csv, line 2, file: 'link.csv' leads outside the job folder through a link. Copy it"
                                + " into the job folder and name it from there, for example captures/after.csv");
    }

    @Test
    void aJobFolderThatIsItselfALinkIsRead() throws IOException, InputException {
        Path link = Files.createSymbolicLink(outside.resolve("link"), folder);
        assertThat(JobReader.read(link).captures()).hasSize(2);
    }
}
