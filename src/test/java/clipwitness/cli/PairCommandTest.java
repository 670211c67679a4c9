package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
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
                .startsWith("Pair      Mismatch, rms        At 1 mA\n")
                .containsPattern("D1 \\+ D3 +1\\.42\\d+.±.0\\.\\d+.mV +51\\d.±.\\d\\d.µV +#{20}\n")
                .endsWith("left over: D4\n");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void jsonHasThePairsAndWhatIsLeft() {
        assertThat(run("--json", device("D1"), device("D3"), device("D4"))).isZero();
        assertThat(out.toString().replaceAll("\\s+", " "))
                .startsWith("{ \"pairs\" : [ { \"devices\" : [ \"D1\", \"D3\" ], \"mismatch\" : 0.0014")
                .contains("\"unit\" : \"V\"")
                .containsPattern("\"expandedUncertaintyAt1mA\" : \\d\\.\\d+E-5")
                .contains("\"left\" : [ \"D4\" ]");
    }

    /** D4 in the place of D1 is 6.2 mV lower at 1 mA, which of 1.2 V is 0.05 dB and half a percent of unevenness at most. */
    @Test
    void withAJobEachPairSaysWhatItWouldClipAtAgainstThePairBefore() {
        assertThat(run("--job", "sample-captures/bass-drive-switch", device("D2"), device("D4")))
                .isZero();
        assertThat(out.toString())
                .containsPattern("D2 \\+ D4 .*as high within.0\\.\\d+.dB, asymmetric by.0\\.\\d+.±.0\\.\\d+.%\n")
                .endsWith(
                        "forecast for job HL-0231, against its pair before, D1 and D2: where the clipper's source is at 2.2\u00A0V, which drives 1 mA through the resistance ahead of the pair, whichever setting of the gain control that is\n");
    }

    @Test
    void aJobWithoutAClipperSaysWhyNothingIsForecast() {
        assertThat(run("--job", "sample-captures/jack-repair", device("D2"), device("D4")))
                .isZero();
        assertThat(out.toString())
                .contains(
                        ": nothing is forecast, because its sheet names no clipper, or the pair before was not traced");
    }

    @Test
    void aSheetInThePlaceOfItsFolderIsNamed() {
        assertThat(run("--job", "sample-captures/jack-repair/job.yaml", device("D2"), device("D4")))
                .isEqualTo(2);
        assertThat(err.toString()).contains("job.yaml: is a file, not a job folder. Name the folder that holds ");
    }

    @Test
    void theSheetIsOnePageWithAllThatTheDrawerNeeds(@TempDir Path folder) throws IOException {
        Path sheet = folder.resolve("drawer.pdf");
        assertThat(run(
                        "--out",
                        sheet.toString(),
                        "--job",
                        "sample-captures/bass-drive-switch",
                        "--temperature",
                        "21 °C",
                        device("D1"),
                        device("D2"),
                        device("D3"),
                        device("D4")))
                .isZero();
        assertThat(err.toString()).isEmpty();
        try (PDDocument document = Loader.loadPDF(sheet.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(document).replaceAll("[\\s\u00A0\u2007]+", " "))
                    .contains("Temperature of the traces 21 °C ± 1 K")
                    .contains("forecast for job HL-0231, against its pair before, D1 and D2")
                    .containsPattern("D1 \\+ D3 1\\.42\\d+ ± 0\\.\\d+ mV 51\\d ± \\d\\d µV as high within")
                    .containsPattern("Digest of the exports: [0-9a-f]{8}");
        }
    }

    @Test
    void aTemperatureInKelvinIsNoneInDegreesCelsius() {
        assertThat(run("--temperature", "300", device("D1"), device("D3"))).isEqualTo(2);
        assertThat(err.toString()).contains("--temperature must lie from -50 to 100 °C but is 300");
    }

    @Test
    void theSheetIsNotWrittenWhereNothingConducts(@TempDir Path folder) throws IOException {
        Path open = Files.writeString(folder.resolve("open.csv"), "Voltage (V),Current (A)\n0,0\n1,0\n2,0\n3,0\n");
        Path sheet = folder.resolve("drawer.pdf");
        assertThat(run("--out", sheet.toString(), open.toString())).isEqualTo(2);
        assertThat(out.toString())
                .isEqualTo("left over: open\nopen: no current flows at any voltage: an open lead or an open device\n");
        assertThat(err.toString())
                .isEqualToNormalizingNewlines(
                        sheet + ": the page is not written, because no device conducts [no-curve]\n");
        assertThat(sheet).doesNotExist();
    }

    @Test
    void aTraceNamedAsThePageIsLeftAsItIs(@TempDir Path folder) throws IOException {
        Path trace = Files.copy(TRACER.resolve("D1.csv"), folder.resolve("D1.csv"));
        assertThat(run("--out", trace.toString(), trace.toString(), device("D3")))
                .isEqualTo(2);
        assertThat(err.toString())
                .isEqualToNormalizingNewlines(
                        trace
                                + ": a file stands there that is no page of this program, and it is left as it is. Name another file with --out [place-taken]\n");
        assertThat(trace).hasSameBinaryContentAs(TRACER.resolve("D1.csv"));
    }

    @Test
    void aPageMayTakeThePlaceOfAnEarlierPageButNotOfAFolder(@TempDir Path folder) throws IOException {
        Path sheet = folder.resolve("drawer.pdf");
        assertThat(run("--out", sheet.toString(), device("D1"), device("D3"))).isZero();
        assertThat(run("--out", sheet.toString(), device("D1"), device("D3"))).isZero();
        assertThat(run("--out", folder.toString(), device("D1"), device("D3"))).isEqualTo(2);
        assertThat(err.toString())
                .isEqualToNormalizingNewlines(
                        folder + ": this is a folder. Name a file in it with --out [place-taken]\n");
    }

    @Test
    void aSecondCurveInAFileIsSaidNotToBeUsed(@TempDir Path folder) throws IOException {
        StringBuilder text = new StringBuilder("Voltage (V),Current 1 (A),Current 2 (A)\n");
        for (double i = 1e-6; i < 1e-2; i *= 1.2) {
            text.append(0.045 * Math.log1p(i / 2.5e-9))
                    .append(',')
                    .append(i)
                    .append(',')
                    .append(i / 2)
                    .append('\n');
        }
        Path file = Files.writeString(folder.resolve("two.csv"), text);
        assertThat(run(file.toString(), device("D1"))).isZero();
        assertThat(out.toString()).contains("two + D1");
        assertThat(err.toString())
                .isEqualToNormalizingNewlines(
                        file + ": only Voltage and Current 1 are read; Current 2 is not used. Write each"
                                + " device's curve into a file of its own to pair it too [several-records]\n");
    }

    @Test
    void aFileGivenTwiceIsOneDevice() {
        assertThat(run(device("D1"), device("D1"))).isZero();
        assertThat(out.toString()).isEqualTo("left over: D1\n");
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
