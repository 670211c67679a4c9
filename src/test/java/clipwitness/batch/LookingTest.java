package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.fault.InputException;
import clipwitness.fixture.Said;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.reading.Progress;
import clipwitness.reading.ReadingOptions;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.Severity;
import clipwitness.report.data.Look;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LookingTest {
    @TempDir
    private Path folder;

    @Test
    void withoutAJobAChannelAtRestIsNoFault() throws IOException, InputException {
        StringBuilder text = new StringBuilder("Time (s),IN (V),OUT (V)\n");
        for (int i = 0; i < 2_000; i++) {
            text.append(i)
                    .append("e-5,")
                    .append(Math.sin(2 * Math.PI * i / 100))
                    .append(",0.25\n");
        }
        Look look = look(text.toString());
        assertThat(look.doubts())
                .filteredOn(d -> d.code() == DoubtCode.NO_FUNDAMENTAL)
                .allSatisfy(d -> {
                    assertThat(d.severity()).isEqualTo(Severity.NOTE);
                    assertThat(Said.doubt(d)).startsWith("OUT: ");
                })
                .isNotEmpty();
        assertThat(look.channels().get(0).waveform()).isPresent();
    }

    @Test
    void aRecordThatIsNoWaveIsNotMeasured() throws IOException, InputException {
        Look look = look("time (s),CH1 (V)\n0.0,-1\n0.0,1\n1.0,-2\n1.0,2\n2.0,-3\n2.0,3\n");
        assertThat(look.channels().get(0).waveform()).isEmpty();
    }

    @Test
    void stretchesThatNoTimeJoinsAreNotMeasuredAsOneWave() throws IOException, InputException {
        StringBuilder text = new StringBuilder("Sample interval,1e-5 s\nCH1 (V)\n");
        for (int i = 0; i < 2_000; i++) {
            text.append(Math.sin(2 * Math.PI * i / 100)).append(i == 1_037 ? "\n\n" : "\n");
        }
        assertThat(look(text.toString()).channels().get(0).waveform()).isEmpty();
    }

    @Test
    void aRecordOfNoiseHasNoFiguresOfAWave() throws IOException, InputException {
        for (double hum : new double[] {0, 2e-4, 4e-4}) {
            Look look = look(noisy(hum, 1e-3));
            assertThat(look.channels()
                            .get(0)
                            .waveform()
                            .map(w -> w.get(WaveformQuantity.THD).value()))
                    .as("hum of %s V", hum)
                    .satisfiesAnyOf(
                            t -> assertThat(t).isEmpty(), t -> assertThat(t).contains(OptionalDouble.empty()));
            assertThat(look.doubts())
                    .singleElement()
                    .satisfies(d -> assertThat(d.code()).isEqualTo(DoubtCode.NO_FUNDAMENTAL))
                    .satisfies(d -> assertThat(d.severity()).isEqualTo(Severity.NOTE));
        }
    }

    @Test
    void aWaveInWeakerNoiseHasThem() throws IOException, InputException {
        Look look = look(noisy(2e-3, 1e-3));
        assertThat(frequency(look)).isCloseTo(50, within(0.1));
    }

    @Test
    void gapsAreCountedOnceAndStopOnlyTheirChannel() throws IOException, InputException {
        StringBuilder text = new StringBuilder("Time (s),CH1 (V),CH2 (V)\n");
        for (int i = 0; i < 2_000; i++) {
            double volts = Math.sin(2 * Math.PI * i / 50);
            text.append(i)
                    .append("e-5,")
                    .append(volts)
                    .append(',')
                    .append(i % 3 == 0 ? "OL" : volts)
                    .append('\n');
        }
        Look look = look(text.toString());
        assertThat(look.doubts())
                .filteredOn(d -> d.code() == DoubtCode.MISSING_SAMPLES)
                .hasSize(1);
        assertThat(thd(look, 0)).isPresent();
        assertThat(thd(look, 1)).isEmpty();
    }

    @Test
    void aRecordTooShortForAnyWaveIsShownWithoutFigures() throws IOException, InputException {
        StringBuilder text = new StringBuilder("Time (s),CH1 (V)\n0,5\n");
        for (int i = 1; i < 40; i++) {
            text.append(i).append(',').append(i * i % 7 - 50 * (i % 3)).append('\n');
            Look look = look(text.toString());
            assertThat(look.export().size()).isEqualTo(i + 1);
        }
    }

    @Test
    void aRecordThatBeginsWithGapsIsMeasuredOnTheRest() throws IOException, InputException {
        StringBuilder text = new StringBuilder("Time (s),CH1 (V)\n");
        for (int i = 0; i < 10_000; i++) {
            String value = i < 60 ? "****" : Double.toString(Math.sin(2 * Math.PI * i / 50));
            text.append(i).append("e-5,").append(value).append('\n');
        }
        Look look = look(text.toString());
        assertThat(frequency(look)).isCloseTo(2_000, within(0.001));
    }

    private static OptionalDouble thd(Look look, int channel) {
        WaveformResult wave = look.channels().get(channel).waveform().orElseThrow();
        return wave.get(WaveformQuantity.THD).value();
    }

    private static double frequency(Look look) {
        WaveformResult wave = look.channels().get(0).waveform().orElseThrow();
        return wave.get(WaveformQuantity.FREQUENCY).value().orElse(0);
    }

    private static String noisy(double peak, double noise) {
        Random random = new Random(5);
        StringBuilder text = new StringBuilder("Time (s),CH1 (V)\n");
        for (int i = 0; i < 20_000; i++) {
            double volts = peak * Math.sin(2 * Math.PI * 50 * i * 1e-5) + noise * random.nextGaussian();
            text.append(i).append("e-5,").append(volts).append('\n');
        }
        return text.toString();
    }

    private Look look(String text) throws IOException, InputException {
        return Looking.at(Files.writeString(folder.resolve("x.csv"), text), ReadingOptions.none(), Progress.NONE);
    }
}
