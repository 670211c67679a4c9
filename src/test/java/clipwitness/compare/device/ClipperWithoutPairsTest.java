package clipwitness.compare.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import clipwitness.compare.Examination;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.StatePrediction;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.TestExamination;
import clipwitness.job.read.JobReader;
import clipwitness.measure.WaveformQuantity;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet that describes a clipper is told why nothing comes of it. */
class ClipperWithoutPairsTest {
    @TempDir
    private Path folder;

    @Test
    void aCleanPathWithoutPairsIsRefusedForEveryState() throws IOException, InputException {
        assertThat(refusals("{topology: shunt, source-resistance: 1 kΩ, clean-path: true}"))
                .containsExactly(tuple("before", DeviceReason.NO_PAIRS), tuple("new", DeviceReason.NO_PAIRS));
    }

    @Test
    void theStateWithoutClippersHasNone() throws IOException, InputException {
        assertThat(refusals("{topology: shunt, source-resistance: 1 kΩ, unclipped: before}"))
                .containsExactly(tuple("new", DeviceReason.NO_PAIRS));
    }

    @Test
    void devicesThatNobodyTracedAreNamed() throws IOException, InputException {
        assertThat(refusals("{topology: shunt, source-resistance: 1 kΩ, pairs: {new: [D1, D2]}}"))
                .containsExactly(tuple("new", DeviceReason.NOT_TRACED));
    }

    private List<Tuple> refusals(String clipper) throws IOException, InputException {
        Files.writeString(folder.resolve("job.yaml"), TestExamination.SHEET + "clipper: " + clipper + "\n");
        Files.writeString(folder.resolve("captures.csv"), "file,kind\n");
        JobResults results = Examination.of(
                JobReader.read(folder),
                "00",
                List.of(
                        MadeUpCapture.ordinary("before", 100).done(),
                        MadeUpCapture.ordinary("new", 100).done()));
        return results.devices().predictions().stream()
                .map(p -> tuple(p.state(), why(p).code()))
                .toList();
    }

    private static Reason why(StatePrediction prediction) {
        return prediction
                .figure(WaveformQuantity.CLIP_UP.key())
                .flatMap(f -> f.predicted().reason())
                .orElseThrow();
    }
}
