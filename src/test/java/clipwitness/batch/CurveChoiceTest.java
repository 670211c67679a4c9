package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.capture.InputException;
import clipwitness.reading.ExportReader;
import clipwitness.reading.ReadingOptions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CurveChoiceTest {
    @TempDir
    private Path folder;

    @Test
    void voltageAndCurrentBesideATimeAreACurve() throws IOException, InputException {
        CurveChoice choice = choice("t (s),V (V),I (mA)\n0,0.1,1\n1,0.3,2\n2,0.5,50\n");
        assertThat(choice.voltage().samples().at(2)).isEqualTo(0.5);
        assertThat(choice.current().samples().at(2)).isEqualTo(0.05);
    }

    @Test
    void voltageAloneIsNoCurve() {
        assertThatThrownBy(() -> choice("t (s),A (V)\n0,0.1\n1,0.3\n2,0.5\n"))
                .hasMessage(
                        "x.csv: a traced device needs a column of voltage and one of current, but the columns are A."
                                + " Export both, with their units in the heading");
    }

    private CurveChoice choice(String text) throws IOException, InputException {
        Path file = Files.writeString(folder.resolve("x.csv"), text);
        return CurveChoice.of(
                ExportReader.read(file, "x.csv", ReadingOptions.none()), Optional.empty(), Optional.empty());
    }
}
