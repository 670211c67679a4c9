package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.CaptureResult;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.Said;
import clipwitness.measure.WaveformQuantity;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.Severity;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Measurement book, section 5: rows that are equal in all but the file and differ by more than 3 dB, a factor of 1.41. */
class ReplicatesThatDifferTest {
    @Test
    void twoChannelsGivenAsReplicatesAreBothRefused() {
        List<CaptureResult> captures =
                refused(level(0.07, 1).sha256("aa"), level(0.7, 1).sha256("bb"));
        assertThat(captures).allSatisfy(c -> {
            assertThat(c.doubts()).hasSize(1);
            assertThat(c.doubts().get(0).code()).isEqualTo(DoubtCode.REPLICATES_DIFFER);
            assertThat(c.doubts().get(0).severity()).isEqualTo(Severity.REFUSAL);
            assertThat(Said.doubt(c.doubts().get(0)))
                    .isEqualTo(
                            "captures/before.csv and captures/before.csv, given as one wave, differ by 20 dB (rms). If"
                                    + " each holds one channel, name the input in input-file");
            assertThat(c.waveform().orElseThrow().refused()).isTrue();
            assertThat(c.waveform().orElseThrow().get(WaveformQuantity.RMS).value())
                    .isEmpty();
        });
    }

    @Test
    void replicatesAndRunsThatDifferByLessOrOnOtherOccasionsStand() {
        assertThat(refused(level(0.7, 1).sha256("aa"), level(0.8, 1).sha256("bb")))
                .allSatisfy(c -> assertThat(c.doubts()).isEmpty());
        assertThat(refused(level(0.07, 1).sha256("aa"), level(0.7, 2).sha256("bb")))
                .allSatisfy(c -> assertThat(c.doubts()).isEmpty());
    }

    /** 0.05 % and 0.02 % of distortion, each known to 0.02 %, may be one. */
    @Test
    void distortionsThatNoiseMakesDifferStand() {
        assertThat(refused(distortion(0.05).sha256("aa"), distortion(0.02).sha256("bb")))
                .allSatisfy(c -> assertThat(c.doubts()).isEmpty());
        assertThat(refused(distortion(0.5).sha256("aa"), distortion(0.02).sha256("bb")))
                .allSatisfy(c -> assertThat(c.doubts()).hasSize(1));
    }

    private static MadeUpCapture level(double rms, int run) {
        return MadeUpCapture.ordinary("before", 50).run(run).with(WaveformQuantity.RMS, rms, 0.001);
    }

    private static MadeUpCapture distortion(double percent) {
        return MadeUpCapture.ordinary("before", 50).with(WaveformQuantity.THD, percent, 0.01);
    }

    private static List<CaptureResult> refused(MadeUpCapture... captures) {
        return ReplicatesThatDiffer.refused(
                Stream.of(captures).map(MadeUpCapture::done).toList());
    }
}
