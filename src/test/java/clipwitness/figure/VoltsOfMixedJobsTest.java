package clipwitness.figure;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Condition;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.JobResults;
import clipwitness.fixture.ExampleJob;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.fixture.MadeUpQuiet;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import clipwitness.words.Speech;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Waves from an oscilloscope are drawn in volts, whatever recorded the noise, the sweep or the playing. */
class VoltsOfMixedJobsTest {
    private static final Doubt NO_VOLTS =
            Doubt.of(Severity.WARNING, DoubtReason.UNIT_ASSUMED_SOUND, Argument.names(List.of("1")));

    private static FigureContext context(CaptureResult... captures) {
        JobResults good = ExampleJob.good().results();
        return FigureContext.of(
                new JobResults(good.job(), good.inputsDigest(), List.of(captures), good.series(), List.of(), List.of()),
                Condition.NONE,
                Speech.ENGLISH);
    }

    @Test
    void aSoundFileOfNoiseTakesTheVoltsFromTheNoiseAlone() {
        FigureContext mixed = context(
                MadeUpCapture.ordinary("received", 50).done(),
                MadeUpQuiet.of("received").doubting(NO_VOLTS).noise(MadeUpQuiet.hiss(1)));
        assertThat(mixed.voltage()).isEqualTo(Unit.VOLT);
        assertThat(mixed.noiseVoltage()).isEqualTo(Unit.ONE);
    }

    @Test
    void aSoundFileOfAWaveTakesThemFromTheWaves() {
        FigureContext sound = context(
                MadeUpCapture.ordinary("received", 50).doubting(NO_VOLTS).done(),
                MadeUpQuiet.of("received").noise(MadeUpQuiet.hiss(1)));
        assertThat(sound.voltage()).isEqualTo(Unit.ONE);
        assertThat(sound.noiseVoltage()).isEqualTo(Unit.VOLT);
    }
}
