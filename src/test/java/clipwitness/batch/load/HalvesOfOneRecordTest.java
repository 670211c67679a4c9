package clipwitness.batch.load;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.CaptureResult;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.Said;
import clipwitness.measure.WaveformQuantity;
import clipwitness.reason.Severity;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Input and output of one record, saved in a file each and given as two captures: the column that joins them is named. */
class HalvesOfOneRecordTest {
    @Test
    void aCleanFileBesideADistortedOneOfTheSameLengthIsTakenForItsInput() {
        List<CaptureResult> captures = doubted(only("in.csv", 0.1, 5000), only("out.csv", 12, 5000));
        assertThat(captures).allSatisfy(c -> {
            assertThat(c.doubts()).hasSize(1);
            assertThat(c.doubts().get(0).severity()).isEqualTo(Severity.WARNING);
            assertThat(Said.doubt(c.doubts().get(0)))
                    .isEqualTo(
                            "in.csv and out.csv look like two channels of one record, a file each: equally long, and in.csv as clean"
                                    + " as a test tone. If so, name in.csv in column input-file of the"
                                    + " row of out.csv, and take its own row out");
        });
    }

    @Test
    void filesOfOtherLengthStandAsTheyAre() {
        assertThat(doubted(only("in.csv", 0.1, 5000), only("out.csv", 12, 4000)))
                .allSatisfy(c -> assertThat(c.doubts()).isEmpty());
    }

    @Test
    void twoCleanFilesAndTwoDistortedOnesMayBeReplicates() {
        assertThat(doubted(only("a.csv", 0.10, 5000), only("b.csv", 0.11, 5000)))
                .allSatisfy(c -> assertThat(c.doubts()).isEmpty());
        assertThat(doubted(only("a.csv", 10, 5000), only("b.csv", 11, 5000)))
                .allSatisfy(c -> assertThat(c.doubts()).isEmpty());
    }

    @Test
    void exportsThatHoldBothChannelsAreNoHalves() {
        assertThat(doubted(
                        MadeUpCapture.ordinary("before", 50).with(WaveformQuantity.THD, 0.1, 0.01),
                        only("out.csv", 12, 5000)))
                .allSatisfy(c -> assertThat(c.doubts()).isEmpty());
    }

    @Test
    void anotherRunIsAnotherRecord() {
        assertThat(doubted(only("in.csv", 0.1, 5000).run(2), only("out.csv", 12, 5000)))
                .allSatisfy(c -> assertThat(c.doubts()).isEmpty());
    }

    private static MadeUpCapture only(String file, double thdPercent, int samples) {
        return MadeUpCapture.ordinary("before", 50)
                .with(WaveformQuantity.THD, thdPercent, 0.01)
                .only(file, samples);
    }

    private static List<CaptureResult> doubted(MadeUpCapture... captures) {
        return HalvesOfOneRecord.doubted(
                Stream.of(captures).map(MadeUpCapture::done).toList());
    }
}
