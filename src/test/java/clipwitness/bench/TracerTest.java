package clipwitness.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.signal.ReferenceRow;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TracerTest {
    private static final List<String> LINES = lines();

    private static List<String> lines() {
        JobFiles folder = new JobFiles();
        new Tracer(folder, ExportText::unitsInHeadings).trace("D1", new Junction(2.5e-9, 1.75, 0.6, 25));
        return new String(folder.bytes("tracer/D1.csv"), StandardCharsets.UTF_8)
                .lines()
                .toList();
    }

    private static double[] cells(String line) {
        return Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray();
    }

    /** The device "silicon signal A" of shockley-curves.csv; noise of 0.05 %, so 0.25 %, and a digit of 1 nA. */
    @ParameterizedTest
    @ValueSource(doubles = {0.34, 0.425, 0.51, 0.595, 0.68})
    void aTraceFollowsTheReference(double volts) {
        double expected = ReferenceRow.of(ClipperCase.class, "shockley-curves.csv")
                .filter(row -> row.text("device").equals("silicon signal A"))
                .filter(row -> row.number("temperature") == 25)
                .filter(row -> row.number("voltage") == volts)
                .mapToDouble(row -> row.number("current"))
                .findFirst()
                .orElseThrow();
        double traced = LINES.stream()
                .skip(1)
                .map(TracerTest::cells)
                .filter(cells -> cells[0] == volts)
                .mapToDouble(cells -> cells[1])
                .findFirst()
                .orElseThrow();
        assertThat(traced).isCloseTo(expected, within(2.5e-3 * expected + 2e-9));
    }

    /** With 0.6 Ω in series the device of the reference passes 10 mA at 0.69 V and stops the tracer above 12 mA. */
    @Test
    void aTraceReachesTenMilliamperesAndStops() {
        assertThat(cells(LINES.get(LINES.size() - 1))[1]).isBetween(10e-3, 12.1e-3);
    }
}
