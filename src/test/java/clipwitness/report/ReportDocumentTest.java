package clipwitness.report;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.JobResults;
import clipwitness.fixture.ExampleJob;
import clipwitness.fixture.ExampleJob.Ending;
import clipwitness.fixture.ExampleSheet;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReportDocumentTest {
    @ParameterizedTest
    @ValueSource(strings = {"customer", "bench"})
    void sameResultsGiveTheSameBytes(String template) throws Exception {
        byte[] first = Rendered.bytes(ExampleJob.good().results(), template);
        byte[] second = Rendered.bytes(ExampleJob.good().results(), template);
        assertThat(second).isEqualTo(first);
    }

    @Test
    void everyPageCarriesTheReportNumberAndItsPlace() throws Exception {
        try (Rendered report = Rendered.customer()) {
            int pages = report.document().getNumberOfPages();
            for (int page = 1; page <= pages; page++) {
                assertThat(report.page(page)).contains("Report HL-0231").contains("page " + page + " of " + pages);
            }
        }
    }

    @Test
    void theEndIsMarkedOnce() throws Exception {
        try (Rendered report = Rendered.customer()) {
            assertThat(report.text()).containsOnlyOnce("■ End of report HL-0231");
            assertThat(report.page(report.document().getNumberOfPages())).contains("■ End of report HL-0231");
        }
    }

    @Test
    void pageOneHasAVerdictSentenceForEachComparison() throws Exception {
        try (Rendered report = Rendered.customer()) {
            assertThat(report.page(1))
                    .contains("✓ Unharmed. After, original clippers compared with: as received")
                    .contains("Level within 0.10 dB at all five gain settings, uncertainty included (limit 0.5 dB).")
                    .contains("– Quieter, harsher. After, new clippers compared with: as received");
        }
    }

    /** A heading with nothing under it reads as a page that lost its text. */
    @Test
    void aReportThatComparesNothingSaysSoUnderItsHeadings() throws Exception {
        JobResults good = ExampleJob.good().results();
        JobResults alone =
                new JobResults(good.job(), good.inputsDigest(), good.captures(), good.series(), List.of(), List.of());
        String nothing = "No two states are compared, so nothing is judged.";
        try (Rendered report = Rendered.of(alone, "customer")) {
            assertThat(report.page(1)).contains("Verdict " + nothing);
        }
        try (Rendered report = Rendered.of(alone, "bench")) {
            assertThat(report.page(1)).contains("Verdict " + nothing);
            String text = report.text();
            int heading = text.indexOf("Comparisons, item by item");
            assertThat(text.substring(heading, text.indexOf("Over the gain control", heading)))
                    .contains(nothing);
        }
    }

    @Test
    void theStatementNamesALimitThatNoSheetSetsAndTheRiskOfEachDecision() throws Exception {
        try (Rendered report = Rendered.customer()) {
            assertThat(report.text())
                    .contains("polarity 90° fixed: half way to a wave turned over")
                    .contains(
                            "Each of the 35 decisions in this report is made by itself. Where the true change lies at its limit,"
                                    + " a decision is wrong about once in fifty times.");
        }
    }

    /** 200.001 / 200.013 - 1 = -60.0e-6, and 0.004 sqrt 2 / 200.01 = 28e-6: less than half of it. */
    @Test
    void aToneThatRanSlowerIsCalledSlower() throws Exception {
        JobResults good = ExampleJob.good().results();
        List<CaptureResult> captures =
                good.captures().stream().map(ReportDocumentTest::slower).toList();
        JobResults results =
                new JobResults(good.job(), good.inputsDigest(), captures, good.series(), good.comparisons(), List.of());
        try (Rendered report = Rendered.of(results, "bench")) {
            assertThat(report.text())
                    .contains("the test tone of original clippers ran 60 ± 28 ppm slower at full gain than that of as "
                            + "received");
        }
    }

    private static CaptureResult slower(CaptureResult capture) {
        boolean meant = capture.row().state().equals(Optional.of("original"))
                && capture.row().condition().equals(ExampleJob.condition(100));
        return capture.withWaveform(capture.waveform()
                .orElseThrow()
                .withValues((q, v) ->
                        meant && q == WaveformQuantity.FREQUENCY ? ExampleJob.value(200.001, Unit.HERTZ, 0.004) : v));
    }

    @Test
    void pageOneHasTheKeyFiguresARowAState() throws Exception {
        try (Rendered report = Rendered.customer()) {
            assertThat(report.page(1))
                    .contains("Key figures at full gain State Level (rms), mV Distortion (THD), %")
                    .containsPattern("Original clippers \\d");
        }
    }

    @Test
    void aFigureThatIsMissingHasTheReasonUnderItsTableOnce() throws Exception {
        try (Rendered report = Rendered.of(ExampleJob.good().results(), "bench")) {
            assertThat(report.text())
                    .contains("gain at the test tone dB –¹")
                    .contains("¹ the capture could not be measured")
                    .contains("¹ below the lowest setting · ² not reached");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"customer", "bench"})
    void aFailSaysWhatFailed(String template) throws Exception {
        try (Rendered report = Rendered.of(ExampleJob.good().ending(Ending.FAIL).results(), template)) {
            assertThat(report.page(1))
                    .contains("✗ Not as it was.")
                    .contains("At full gain it is 1.60 ± 0.03 dB quieter (limit 0.5 dB).");
        }
    }

    @Test
    void anUndecidedVerdictSaysWhatWouldDecide() throws Exception {
        try (Rendered report =
                Rendered.of(ExampleJob.good().ending(Ending.UNDECIDED).results(), "customer")) {
            assertThat(report.page(1))
                    .contains("? Not decided yet.")
                    .contains("At 50 % gain its distortion is 0.93 ± 0.22 dB higher")
                    .contains("Set the controls anew and capture each state until there are 3 runs");
        }
    }

    @Test
    void textFromTheSheetIsPrintedAsItStands() throws Exception {
        ExampleSheet sheet = ExampleSheet.plain().forCustomer("<script>&\"Ω</script> {{ 7 }}");
        try (Rendered report = Rendered.of(ExampleJob.with(sheet).results(), "customer")) {
            assertThat(report.page(1)).contains("<script>&\"Ω</script> {{ 7 }}");
        }
    }

    @Test
    void theDocumentKnowsItsTitleAuthorLanguageAndDateFromTheSheet() throws Exception {
        try (Rendered report = Rendered.customer()) {
            PDDocumentCatalog catalog = report.document().getDocumentCatalog();
            assertThat(report.document().getDocumentInformation().getTitle())
                    .isEqualTo("HL-0231 · Asymmetric clipping switch for a bass overdrive");
            assertThat(report.document().getDocumentInformation().getAuthor()).isEqualTo("Harbour Lane Bench");
            assertThat(report.document()
                            .getDocumentInformation()
                            .getCreationDate()
                            .toInstant())
                    .isEqualTo("2026-05-04T00:00:00Z");
            assertThat(catalog.getLanguage()).isEqualTo("en");
            assertThat(catalog.getMarkInfo().isMarked()).isTrue();
            assertThat(catalog.getDocumentOutline().getFirstChild().getTitle())
                    .isEqualTo("Is the original sound unharmed?");
        }
    }

    @Test
    void attachmentsAreAssociatedFilesInOrderOfTheirNames() throws Exception {
        try (Rendered report = Rendered.customer()) {
            PDDocumentCatalog catalog = report.document().getDocumentCatalog();
            assertThat(catalog.getNames().getEmbeddedFiles().getNames().keySet())
                    .containsExactly("HL-0231-results.json", "captures.csv", "job.yaml");
            assertThat(catalog.getCOSObject()
                            .getCOSArray(COSName.getPDFName("AF"))
                            .size())
                    .isEqualTo(3);
            assertThat(catalog.getNames()
                            .getEmbeddedFiles()
                            .getNames()
                            .get("HL-0231-results.json")
                            .getEmbeddedFile()
                            .getSubtype())
                    .isEqualTo("application/json");
        }
    }

    @Test
    void everyFontIsEmbeddedAsASubset() throws Exception {
        try (Rendered report = Rendered.customer()) {
            for (var page : report.document().getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
                    assertThat(page.getResources().getFont(name).getName()).matches("[A-Z]{6}\\+.*");
                }
            }
        }
    }

    @Test
    void aCharacterThatNoFontHasIsPrintedVisibly() throws Exception {
        ExampleSheet sheet = ExampleSheet.plain().forCustomer("Player 漢, Ωµ−≥±° αβγ é e\u0301");
        try (Rendered report = Rendered.of(ExampleJob.with(sheet).results(), "customer")) {
            assertThat(report.page(1)).contains("Player [U+6F22], Ωµ−≥±° αβγ é é");
        }
    }

    @Test
    void figuresCarryTheirTextAsText() throws Exception {
        try (Rendered report = Rendered.customer()) {
            assertThat(report.page(1)).contains("Drive in Ω, −3 dB");
        }
    }

    @Test
    void bothPapersAreThere() throws Exception {
        try (Rendered report = Rendered.of(
                ExampleJob.with(ExampleSheet.plain().on(clipwitness.job.Paper.LETTER))
                        .results(),
                "customer")) {
            assertThat(List.of(
                            Math.round(
                                    report.document().getPage(0).getMediaBox().getWidth()),
                            Math.round(
                                    report.document().getPage(0).getMediaBox().getHeight())))
                    .containsExactly(612, 792);
        }
    }
}
