package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PairCommandTest {
    private static final Path TRACER = Path.of("sample-captures", "bass-drive-switch", "tracer");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        List<String> all = new ArrayList<>(List.of("pair"));
        all.addAll(List.of(args));
        return new Clipwitness(new PrintWriter(out, true), new PrintWriter(err, true)).run(all.toArray(String[]::new));
    }

    private static String device(String name) {
        return TRACER.resolve(name + ".csv").toString();
    }

    @Test
    void ofThreeDevicesThoseTwoThatMatchAreAPairAndTheThirdIsLeft() {
        assertThat(run(device("D1"), device("D3"), device("D4"))).isZero();
        assertThat(out.toString())
                .containsPattern("D1 \\+ D3 +1\\.42.mV +51\\d.µV +#{20}")
                .endsWith("left over: D4\n");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void jsonHasThePairsAndWhatIsLeft() {
        assertThat(run("--json", device("D1"), device("D3"), device("D4"))).isZero();
        assertThat(out.toString().replaceAll("\\s+", " "))
                .startsWith("{ \"pairs\" : [ { \"devices\" : [ \"D1\", \"D3\" ], \"mismatch\" : 0.0014")
                .contains("\"unit\" : \"V\"")
                .contains("\"left\" : [ \"D4\" ]");
    }

    /** D2 and D4 in the place of D1 and D2: a little lower, for D4 has the larger saturation current. */
    @Test
    void withAJobEachPairSaysWhatItWouldClipAtAgainstThePairBefore() {
        assertThat(run("--job", "sample-captures/bass-drive-switch", device("D2"), device("D4")))
                .isZero();
        assertThat(out.toString()).containsPattern("D2 \\+ D4 .*(as high|0\\.\\d.dB lower), symmetric to 1.%");
    }

    @Test
    void theSheetIsOnePage(@TempDir Path folder) throws IOException {
        Path sheet = folder.resolve("drawer.pdf");
        assertThat(run("--out", sheet.toString(), device("D1"), device("D2"), device("D3"), device("D4")))
                .isZero();
        String pdf = Files.readString(sheet, StandardCharsets.ISO_8859_1);
        assertThat(pdf).startsWith("%PDF-");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void whatCannotBeReadIsNamedAndTheOthersArePairedAllTheSame(@TempDir Path folder) {
        Path gone = folder.resolve("gone.csv");
        assertThat(run(gone.toString(), device("D1"), device("D2"))).isEqualTo(2);
        assertThat(err.toString()).contains("gone.csv");
        assertThat(out.toString()).contains("D1 + D2");
    }

    @Test
    void aResistorIsLeftWithTheReason(@TempDir Path folder) throws IOException {
        StringBuilder text = new StringBuilder("Voltage (V),Current (mA)\n");
        for (int i = 0; i <= 50; i++) {
            text.append(i / 10.0).append(',').append(i / 4.7).append('\n');
        }
        Path file = Files.writeString(folder.resolve("r.csv"), text);
        assertThat(run(file.toString())).isZero();
        assertThat(out.toString()).contains("left over: r\n").contains("a resistor of 470");
    }
}
