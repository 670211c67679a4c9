package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.ExportFolder;
import clipwitness.fixture.SoundFiles;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DraftCommandTest {
    @TempDir
    private Path temp;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private ExportFolder folder;

    @BeforeEach
    void makeFolder() {
        folder = new ExportFolder(temp.resolve("HL 300"));
    }

    @Test
    void foldersPerStateMakeAReportAtOnce() throws IOException {
        for (int gain : new int[] {0, 100}) {
            folder.wave("Before/Gain " + gain + ".csv", 1000, 0.1, 1 + gain / 50.0)
                    .wave("After Original/Gain " + gain + ".csv", 1000, 0.1, 1 + gain / 50.0)
                    .wave("After Mod/Gain " + gain + ".csv", 1000, 0.1, 1 + gain / 25.0);
        }
        folder.noise("Before/Noise.csv").curve("Devices/D1.csv").curve("Devices/D2.csv");
        assertThat(draft()).isEqualTo(0);
        assertThat(table()).isEqualTo("""
                file,state,kind,gain,device
                Before/Gain 0.csv,before,waveform,0,
                Before/Gain 100.csv,before,waveform,100,
                Before/Noise.csv,before,noise,,
                After Original/Gain 0.csv,after-original,waveform,0,
                After Original/Gain 100.csv,after-original,waveform,100,
                After Mod/Gain 0.csv,after-mod,waveform,0,
                After Mod/Gain 100.csv,after-mod,waveform,100,
                Devices/D1.csv,,junction,,D1
                Devices/D2.csv,,junction,,D2
                """);
        assertThat(sheet())
                .contains("  number: \"HL-300\"  # the name of the folder\n")
                .contains("  date: 2026-05-04  # the day on which the newest export was saved")
                .contains("stimulus: {shape: sine, frequency: 1 kHz, level: 100 mV}")
                .contains("  before: {label: \"Before\", role: before}")
                .contains("  after-original: {label: \"After original\", role: unchanged}")
                .contains("  after-mod: {label: \"After mod\", role: changed}");
        assertThat(run("report", folder.path().toString())).isBetween(0, 1);
        assertThat(folder.path().resolve("report/HL-300.pdf")).exists();
    }

    /** A recording of playing among the exports: the untouched draft makes a report, which names it and judges nothing by it. */
    @Test
    void aRecordingOfPlayingIsListeningAndTheUntouchedDraftIsReported() throws IOException {
        for (String state : new String[] {"Before", "After Original"}) {
            folder.wave(state + "/Gain 50.csv", 1000, 0.1, 2);
        }
        SoundFiles.write(folder.path().resolve("Before/playing.wav"), 2 * SoundFiles.RATE, SoundFiles.riff(0.4));
        assertThat(draft()).isEqualTo(0);
        assertThat(table()).contains("Before/playing.wav,before,listening");
        assertThat(run("report", folder.path().toString())).isBetween(0, 1);
        assertThat(Files.readString(folder.path().resolve("report/HL-300-results.json")))
                .contains("\"kind\" : \"listening\"", "\"rmsLevel\"");
        assertThat(Files.readString(folder.path().resolve("report/HL-300-results.csv")))
                .contains("capture,before,,Before/playing.wav,peakLevel,");
    }

    @Test
    void everyGuessIsPrintedWithItsReason() throws IOException {
        folder.wave("stock_g050.csv", 1000, 0.1, 2).curve("Q1 trace.csv");
        draft();
        assertThat(out.toString())
                .contains(
                        "stock_g050.csv: waveform (a steady tone of 1 kHz in one or more of its 2 channels);"
                                + " state stock (\"stock\" in the name of the file); gain 50 % (\"g050\" in the name of the file)\n")
                .contains("Q1 trace.csv: junction (columns of voltage and current); device Q1 (the name of the file)\n")
                .contains("state stock: role before (it names the original, and nothing else is from before)\n")
                .endsWith("job.yaml\n" + folder.path().resolve("captures.csv") + "\n");
        assertThat(err.toString())
                .isEqualToNormalizingNewlines(
                        "Look them through, then make the report: clipwitness report \"" + folder.path() + "\"\n");
    }

    @Test
    void aStateWithoutAKnownRoleIsAQuestionThatTheReportAsksOnce() throws IOException {
        folder.wave("before g0.csv", 1000, 0.1, 2)
                .wave("after g0.csv", 1000, 0.1, 2)
                .wave("after g100.csv", 1000, 0.1, 2);
        assertThat(draft()).isEqualTo(0);
        assertThat(out.toString())
                .contains("- which role has the state after? Take the # away before one of its lines in job.yaml\n");
        assertThat(run("report", folder.path().toString())).isEqualTo(2);
        assertThat(err.toString().lines().toList())
                .singleElement()
                .satisfies(
                        line -> assertThat(line)
                                .contains("job.yaml, line ")
                                .endsWith(
                                        ": the state 'after' is commented out, and rows of captures.csv name it."
                                                + " Take the # away before one line of it, the one with the right role [open-question]"));
        Files.writeString(
                folder.path().resolve("job.yaml"),
                sheet().replace(
                                "  # after: {label: \"After\", role: changed}",
                                "  after: {label: \"After\", role: changed}"));
        assertThat(run("report", folder.path().toString())).isBetween(0, 1);
    }

    @Test
    void anInstrumentsNumbersAskForTheStateAndTheReportNamesTheSheet() throws IOException {
        folder.wave("scope_12.csv", 1000, 0.1, 2).wave("scope_13.csv", 1000, 0.1, 3);
        assertThat(draft()).isEqualTo(0);
        assertThat(table()).contains("scope_12.csv,,waveform,\n");
        assertThat(out.toString())
                .contains(
                        "- which state do these files show: scope_12.csv, scope_13.csv? Write it in column state of captures.csv");
        assertThat(run("report", folder.path().toString())).isEqualTo(2);
        assertThat(err.toString()).contains("job.yaml").contains("captures.csv, line 2, state: the cell is empty");
    }

    @Test
    void theWavesOfAStateAreListedAsTheGainControlIsTurnedUp() throws IOException {
        folder.wave("stock 3 oclock.csv", 1000, 0.1, 4)
                .wave("stock 9 oclock.csv", 1000, 0.1, 3)
                .wave("stock max.csv", 1000, 0.1, 5)
                .wave("stock min.csv", 1000, 0.1, 2)
                .noise("stock hiss.csv");
        draft();
        assertThat(table()).isEqualTo("""
                file,state,kind,gain
                stock min.csv,stock,waveform,0
                stock 9 oclock.csv,stock,waveform,20
                stock 3 oclock.csv,stock,waveform,80
                stock max.csv,stock,waveform,100
                stock hiss.csv,stock,noise,
                """);
    }

    @Test
    void oneFileAChannelBecomesOneRowWithTheInputsFile() throws IOException {
        folder.one("stock-050-CH1.csv", 1000, 0.1, 0)
                .one("stock-050-CH2.csv", 1000, 0.1, 4)
                .one("mod/g50_out.csv", 1000, 0.1, 6)
                .one("mod/g50_in.csv", 1000, 0.1, 0);
        draft();
        assertThat(table()).isEqualTo("""
                file,state,kind,gain,input-file
                stock-050-CH2.csv,stock,waveform,,stock-050-CH1.csv
                mod/g50_out.csv,mod,waveform,50,mod/g50_in.csv
                """);
        assertThat(sheet()).contains("level: 100 mV");
    }

    @Test
    void theCleanOneOfTwoChannelsIsTheInputWhateverItsPlace() throws IOException {
        folder.turned("stock g50.csv", 1000, 0.1, 4).turned("mod g50.csv", 1000, 0.1, 6);
        draft();
        assertThat(table()).isEqualTo("""
                file,state,kind,gain,input,output
                stock g50.csv,stock,waveform,50,2,1
                mod g50.csv,mod,waveform,50,2,1
                """);
    }

    @Test
    void sweepsAndOtherFrequenciesAndLevelsAreSeenInTheRecords() throws IOException {
        folder.wave("stock g50.csv", 1000, 0.1, 4)
                .wave("stock g50 (2).csv", 1000, 0.1, 4)
                .wave("stock g50 soft.csv", 1000, 0.02, 4)
                .wave("stock g50 low.csv", 250, 0.1, 4)
                .sweep("stock/a.csv");
        draft();
        assertThat(table())
                .contains("stock g50 (2).csv,stock,waveform,50,,,2\n")
                .contains("stock g50 low.csv,stock-low,waveform,50,250 Hz,,\n")
                .contains("stock g50 soft.csv,stock-soft,waveform,50,,20 mV,\n")
                .contains("stock/a.csv,stock,response,,,,\n");
    }

    @Test
    void pathsWithMarksAndLettersAreQuotedSoThatTheReportFindsThem() throws IOException {
        for (String state : new String[] {"before #1, \"Fuß\" 100% it's", "nach Umbau, für O'N; süß"}) {
            folder.wave(state + "/g 50 %.csv", 1000, 0.1, 3);
        }
        assertThat(draft()).isEqualTo(0);
        assertThat(table()).contains("\"before #1, \"\"Fuß\"\" 100% it's/g 50 %.csv\",");
        assertThat(run("report", folder.path().toString())).isBetween(0, 1);
    }

    @Test
    void picturesAreOfferedAndForeignFilesNamed() throws IOException {
        folder.wave("before g50.csv", 1000, 0.1, 3)
                .wave("report/old g50.csv", 1000, 0.1, 3)
                .wave("other/stock g50.csv", 1000, 0.1, 3)
                .file("other/job.yaml", "report: {}\n")
                .file("notes.txt", "Came in dead. Replaced the jack.\n")
                .file("parts.pdf", "%PDF-1.4\n")
                .file(".hidden.csv", "t,v\n");
        byte[] png = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0};
        Files.write(folder.path().resolve("front \"side\".png"), png);
        assertThat(draft()).isEqualTo(0);
        assertThat(table()).isEqualTo("file,state,kind,gain\nbefore g50.csv,before,waveform,50\n");
        assertThat(sheet()).contains("#   - {file: \"front \\\"side\\\".png\", caption: \"front \\\"side\\\"\"}\n");
        assertThat(out.toString())
                .contains("not taken: .hidden.csv (a hidden file)\n")
                .contains("not taken: notes.txt (")
                .contains("not taken: parts.pdf (")
                .contains("not taken: other/ (a job of its own)\n")
                .contains("not taken: report/ (a folder of results, which is never read as input)\n");
    }

    @Test
    void nothingIsWrittenWhereOneOfTheTwoStands() throws IOException {
        for (String name : new String[] {"job.yaml", "captures.csv"}) {
            ExportFolder taken = new ExportFolder(temp.resolve(name + " is there"));
            taken.wave("before g50.csv", 1000, 0.1, 3).file(name, "mine\n");
            assertThat(run("draft", taken.path().toString())).isEqualTo(2);
            assertThat(names(taken.path())).containsExactlyInAnyOrder("before g50.csv", name);
            assertThat(taken.path().resolve(name)).hasContent("mine\n");
            assertThat(err.toString()).contains(name + ": this file is there already, and nothing was written");
        }
    }

    @Test
    void aFolderWithoutExportsIsRefusedWithASentence() throws IOException {
        Files.createDirectories(folder.path());
        assertThat(draft()).isEqualTo(2);
        assertThat(err.toString()).contains("HL 300: the folder is empty. Put the exports of the oscilloscope");
        folder.file("notes.txt", "nothing here\n");
        assertThat(draft()).isEqualTo(2);
        assertThat(err.toString())
                .contains("HL 300: no file in it is an export")
                .contains("notes.txt: not taken: ");
        assertThat(run("draft", temp.resolve("nowhere").toString())).isEqualTo(2);
        assertThat(err.toString()).contains("nowhere: there is no such folder");
        assertThat(names(folder.path())).containsExactly("notes.txt");
    }

    @Test
    void anExportThatStatesNoIntervalHasARowAndAQuestion() throws IOException {
        StringBuilder csv = new StringBuilder("IN (V),OUT (V)\n");
        for (int i = 0; i < 200; i++) {
            csv.append(i % 7).append(".0,").append(i % 5).append(".5\n");
        }
        folder.file("before g50.csv", csv.toString()).wave("before g0.csv", 1000, 0.1, 3);
        assertThat(draft()).isEqualTo(0);
        assertThat(table())
                .startsWith("file,state,kind,gain,interval,unit\n")
                .contains("before g50.csv,before,waveform,50,,\n");
        assertThat(out.toString()).contains("- before g50.csv: ");
    }

    private int draft() {
        return run("draft", folder.path().toString());
    }

    private String sheet() throws IOException {
        return Files.readString(folder.path().resolve("job.yaml"), StandardCharsets.UTF_8);
    }

    private String table() throws IOException {
        return Files.readString(folder.path().resolve("captures.csv"), StandardCharsets.UTF_8);
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return new ArrayList<>(files.map(f -> f.getFileName().toString()).toList());
        }
    }

    private int run(String... args) {
        err.getBuffer().setLength(0);
        return new Clipwitness(new PrintWriter(out, true), new PrintWriter(err, true)).run(args);
    }
}
