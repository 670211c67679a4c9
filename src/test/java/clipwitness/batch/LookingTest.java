package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.DoubtCode;
import clipwitness.capture.InputException;
import clipwitness.capture.Severity;
import clipwitness.measure.WaveformQuantity;
import clipwitness.reading.Progress;
import clipwitness.reading.ReadingOptions;
import clipwitness.report.Look;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
                    assertThat(d.text()).startsWith("OUT: ");
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
        assertThat(look.channels()
                        .get(0)
                        .waveform()
                        .orElseThrow()
                        .get(WaveformQuantity.FREQUENCY)
                        .value()
                        .orElse(0))
                .isCloseTo(2_000, within(0.001));
    }

    private Look look(String text) throws IOException, InputException {
        return Looking.at(Files.writeString(folder.resolve("x.csv"), text), ReadingOptions.none(), Progress.NONE);
    }
}
