package clipwitness.reading;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Export;
import clipwitness.fault.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is read, and how it is worded, does not depend on the country that the computer is set to. */
class OtherLocaleTest {
    @TempDir
    private Path folder;

    @Test
    void fourCountriesReadTheSame() throws IOException, InputException {
        Path file = Files.writeString(
                folder.resolve("x.csv"),
                "SAMPLING INTERVAL,0.002\nTIME (MS),CH1 (VOLT),I1 (MILLIAMP)\n0.000,1.5,3\n0.002,****,4\n0.004,2.5,5\n0.006,2.5,5\n");
        List<String> readings = new ArrayList<>();
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("en-US", "de-DE", "tr-TR", "ar-EG-u-nu-arab")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                Export export = ExportReader.read(file, "x.csv", ReadingOptions.none());
                readings.add(export.toString() + export.channels() + export.doubts() + export.evidence());
            }
        } finally {
            Locale.setDefault(before);
        }
        assertThat(readings.stream().distinct()).hasSize(1);
    }
}
