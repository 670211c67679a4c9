package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.batch.load.Loading;
import clipwitness.batch.load.Sha256;
import clipwitness.compare.Examination;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.fixture.JobFolder;
import clipwitness.fixture.SoundFiles;
import clipwitness.job.CaptureKind;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.measure.ListeningFigure;
import clipwitness.reading.Progress;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.Severity;
import clipwitness.report.build.ReportModels;
import clipwitness.report.model.ListedCapture;
import clipwitness.report.model.ReportModel;
import clipwitness.words.WordBundle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job with recordings of playing among its captures: they are kept, and what is measured, compared and judged is the same without them. */
class ListeningJobsTest {
    private static final int SECONDS = 3;

    @TempDir
    Path folder;

    private JobFolder job;

    @BeforeEach
    void makeJob() throws IOException {
        job = JobFolder.unchanged(folder, "L-1");
    }

    private JobResults examined() throws InputException {
        Job read = JobReader.read(folder);
        return Examination.of(read, "00", Loading.some(read, r -> true, Progress.NONE));
    }

    private void played(String file, String state, double loudness, String gain, String scale) throws IOException {
        SoundFiles.write(folder.resolve(file), SECONDS * SoundFiles.RATE, SoundFiles.riff(loudness));
        String table = Files.readString(folder.resolve("captures.csv"));
        if (!table.startsWith("file,state,kind,gain,scale")) {
            table = table.replace(",gain\n", ",gain,scale\n").replaceAll("(?m)(\\d)$", "$1,");
        }
        job.write("captures.csv", table + String.join(",", file, state, "listening", gain, scale) + "\n");
    }

    private static CaptureResult playing(JobResults results, int index) {
        return results.captures().stream()
                .filter(c -> c.row().kind() == CaptureKind.LISTENING)
                .toList()
                .get(index);
    }

    private static ReportModel model(JobResults results) {
        return new ReportModels(WordBundle.builtIn()).of(results, Map.of(), "", List.of(), "test");
    }

    @Test
    void whatIsComparedAndWhatIsNotExaminedIsTheSameWithoutThem() throws IOException, InputException {
        JobResults without = examined();
        played("before.wav", "before", 0.4, "100", "");
        played("after.wav", "after", 1.4, "100", "2.5 V");
        JobResults with = examined();
        assertThat(with.comparisons()).isEqualTo(without.comparisons());
        assertThat(with.series()).isEqualTo(without.series());
        assertThat(with.hints()).isEqualTo(without.hints());
        assertThat(model(with).notExamined()).isEqualTo(model(without).notExamined());
        assertThat(model(with).examined()).isEqualTo(model(without).examined());
    }

    @Test
    void aRecordingIsHashedAndItsLevelIsGivenAgainstFullScale() throws IOException, InputException {
        played("before.wav", "before", 0.4, "", "");
        CaptureResult capture = playing(examined(), 0);
        assertThat(capture.export().sha256()).isEqualTo(Sha256.of(folder.resolve("before.wav")));
        assertThat(capture.listening().orElseThrow().values())
                .containsOnlyKeys(ListeningFigure.RMS_LEVEL, ListeningFigure.PEAK_LEVEL);
        assertThat(capture.doubts()).extracting(Doubt::code).containsExactly(DoubtCode.UNIT_ASSUMED);
        assertThat(capture.doubts()).extracting(Doubt::severity).containsExactly(Severity.NOTE);
    }

    @Test
    void aRecordingThatClipsIsDoubtedAndAScaleGivesVolts() throws IOException, InputException {
        played("after.wav", "after", 1.4, "", "2.5 V");
        CaptureResult capture = playing(examined(), 0);
        assertThat(capture.doubts()).extracting(Doubt::code).containsExactly(DoubtCode.OVER_RANGE);
        assertThat(capture.listening()
                        .orElseThrow()
                        .values()
                        .get(ListeningFigure.PEAK)
                        .asValue())
                .hasValueSatisfying(v -> assertThat(v.number()).isEqualTo(2.5));
    }

    @Test
    void thePageNamesThemWithLengthAndLevelAndSaysThatNothingIsJudgedByThem() throws IOException, InputException {
        assertThat(model(examined()).kept()).isEmpty();
        played("before.wav", "before", 0.4, "", "");
        assertThat(model(examined()).kept()).isEqualTo("a recording of playing (before the repair)");
        played("after.wav", "after", 0.4, "50", "2.5 V");
        ReportModel page = model(examined());
        assertThat(page.kept()).isEqualTo("2 recordings of playing (before the repair and after the repair)");
        List<ListedCapture> listed =
                page.captures().stream().filter(c -> !c.kept().isEmpty()).toList();
        assertThat(listed).extracting(ListedCapture::condition).containsExactly("playing", "playing, 50\u00a0% gain");
        assertThat(listed.get(0).kept())
                .startsWith("3.00\u00a0s; against full scale: rms ")
                .endsWith("Kept as evidence; neither compared nor judged.");
        assertThat(listed.get(1).kept()).startsWith("3.00\u00a0s, rms ").contains("mV, peak 9");
    }

    @Test
    void aChannelThatTheRowNamesIsTheOneOfTheFigures() throws IOException, InputException {
        job.write("captures.csv", """
                file,state,kind,gain,output
                before-0.csv,before,waveform,0,
                after-0.csv,after,waveform,0,
                before-100.csv,before,listening,100,IN
                """);
        CaptureResult capture = playing(examined(), 0);
        assertThat(capture.export().output()).isEqualTo("IN");
        assertThat(capture.export().input()).isEqualTo(Optional.empty());
        assertThat(capture.listening().orElseThrow().values())
                .containsOnlyKeys(ListeningFigure.RMS, ListeningFigure.PEAK);
    }
}
