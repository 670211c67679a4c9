package clipwitness.batch.choice;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fault.InputException;
import clipwitness.reading.ExportReader;
import clipwitness.reading.ReadingOptions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CurveOverTimeTest {
    @TempDir
    private Path folder;

    @Test
    void voltageAndCurrentBesideATimeAreACurve() throws IOException, InputException {
        String text = "t (s),V (V),I (mA)\n0,0.1,1\n1,0.3,2\n2,0.5,50\n";
        Path file = Files.writeString(folder.resolve("x.csv"), text);
        CurveChoice choice = CurveChoice.of(ExportReader.read(file, "x.csv", ReadingOptions.none()));
        assertThat(choice.voltage().samples().at(2)).isEqualTo(0.5);
        assertThat(choice.current().samples().at(2)).isEqualTo(0.05);
    }
}
