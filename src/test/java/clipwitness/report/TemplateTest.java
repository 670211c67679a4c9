package clipwitness.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.fixture.ExampleJob;
import clipwitness.fixture.ExampleSheet;
import clipwitness.report.page.TemplateSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TemplateTest {
    @TempDir
    private Path folder;

    private String template(String body) throws IOException {
        return page("<html lang=\"en\"><head><title>t</title></head><body>" + body + "</body></html>");
    }

    private String page(String text) throws IOException {
        Files.writeString(folder.resolve("report.html"), text);
        return folder.toString();
    }

    private String place() throws IOException {
        return folder.toRealPath().resolve("report.html").toString();
    }

    private static byte[] render(String template) throws InputException {
        return Rendered.bytes(ExampleJob.good().results(), template);
    }

    @Test
    void aFolderIsUsedAsItStands() throws Exception {
        try (Rendered report =
                Rendered.of(ExampleJob.good().results(), template("<p>Bericht {{ report.identity.number }}</p>"))) {
            assertThat(report.text()).isEqualTo("Bericht HL-0231 ");
        }
    }

    @Test
    void theFoldersNameIsTheTemplatesName() throws Exception {
        assertThat(TemplateSource.find(template(""), Path.of(".")).name())
                .isEqualTo(folder.getFileName().toString());
    }

    @Test
    void aTemplateRewordsSentences() throws Exception {
        String template = template("{% for v in report.verdicts %}<p>{{ v.word }}</p>{% endfor %}");
        Files.writeString(folder.resolve("words.properties"), "verdict.lead.pass = Unversehrt\n");
        try (Rendered report = Rendered.of(ExampleJob.good().results(), template)) {
            assertThat(report.text()).isEqualTo("Unversehrt Quieter, harsher. Different, as meant. ");
        }
    }

    @Test
    void aReportIsPrintedInNoLanguageThatItsWordsAreNotIn() throws Exception {
        JobResults dutch = ExampleJob.with(ExampleSheet.plain().in("nl-BE")).results();
        assertThatThrownBy(() -> Rendered.bytes(dutch, "customer"))
                .isInstanceOf(InputException.class)
                .hasMessage(
                        "job/job.yaml, report.language: the template customer has no words in nl-BE. Its words are in en and de: "
                                + "write one of these as the language, or name a template folder whose words.properties has the "
                                + "line language = nl-BE");
        String template = template("<p>{{ report.conformity.limits[0].value }}</p>");
        Files.writeString(folder.resolve("words.properties"), "language = nl\n");
        try (Rendered report = Rendered.of(dutch, template)) {
            assertThat(report.text()).isEqualTo("0,5 dB ");
        }
    }

    @Test
    void aTemplateInGermanHasTheProgramsGermanSentences() throws Exception {
        JobResults german = ExampleJob.with(ExampleSheet.plain().in("de-AT")).results();
        String template = template("<p>{{ report.conformity.limits[0].value }} {{ report.verdicts[0].word }}</p>");
        try (Rendered report = Rendered.of(german, template)) {
            assertThat(report.text()).isEqualTo("0,5 dB Unversehrt. ");
        }
        Files.writeString(folder.resolve("words-de.properties"), "verdict.lead.pass = Heil.\n");
        try (Rendered report = Rendered.of(german, template)) {
            assertThat(report.text()).isEqualTo("0,5 dB Heil. ");
        }
    }

    @Test
    void sentencesOfOneLanguageDoNotStandBetweenThoseOfAnother() throws Exception {
        JobResults german = ExampleJob.with(ExampleSheet.plain().in("de")).results();
        String template = template("<p>{{ report.verdicts[0].word }}</p>");
        Files.writeString(folder.resolve("words.properties"), "verdict.pass = Unharmed\n");
        assertThatThrownBy(() -> Rendered.bytes(german, template))
                .isInstanceOf(InputException.class)
                .hasMessageEndingWith(
                        "words its sentences in en, not in de. Write language: en, or put the sentences in "
                                + "the report's language into a file words-de.properties in the template's folder");
        Files.writeString(folder.resolve("words.properties"), "# verdict.pass = Unharmed\n");
        try (Rendered report = Rendered.of(german, template)) {
            assertThat(report.text()).isEqualTo("Unversehrt. ");
        }
    }

    @Test
    void aPageForALanguageTakesThePlaceOfTheOther() throws Exception {
        String template = template("{% include \"part.html\" %}");
        Files.writeString(folder.resolve("part.html"), "<p>one</p>");
        Files.writeString(folder.resolve("part-de.html"), "<p>eins</p>");
        try (Rendered english = Rendered.of(ExampleJob.good().results(), template);
                Rendered german = Rendered.of(
                        ExampleJob.with(ExampleSheet.plain().in("de")).results(), template)) {
            assertThat(english.text()).isEqualTo("one ");
            assertThat(german.text()).isEqualTo("eins ");
        }
        Files.writeString(folder.resolve("part-de.html"), "<p>eins</p>\n{{ report.x }}");
        assertThatThrownBy(() -> Rendered.bytes(
                        ExampleJob.with(ExampleSheet.plain().in("de")).results(), template))
                .hasMessageContaining("part-de.html, line 2: the template cannot be filled: there is no 'x' here");
    }

    @Test
    void theCountryOfTheLanguageIsTheSheetsToChoose() throws Exception {
        JobResults british = ExampleJob.with(ExampleSheet.plain().in("en-GB")).results();
        try (Rendered report = Rendered.of(british, "customer")) {
            assertThat(report.document().getDocumentCatalog().getLanguage()).isEqualTo("en-GB");
        }
    }

    @Test
    void anUnknownTemplateIsAnError() {
        assertThatThrownBy(() -> TemplateSource.find("custommer", folder))
                .isInstanceOf(InputException.class)
                .hasMessage("custommer: there is no template of this name and no folder with a file report.html. "
                        + "Did you mean 'customer'? Built-in templates are customer and bench; a folder is looked for in the job folder and where the program "
                        + "runs");
    }

    @Test
    void anUnknownNameIsAnErrorWithFileAndLine() throws IOException {
        String template = template("\n<p>{{ report.identity.numbr }}</p>");
        assertThatThrownBy(() -> render(template))
                .isInstanceOf(InputException.class)
                .hasMessage(place() + ", line 2: the template cannot be filled: there is no 'numbr' here. "
                        + "Did you mean 'number'? README.md in a copied template (clipwitness template customer FOLDER) "
                        + "lists the names that a template may use");
    }

    @Test
    void anUnknownSentenceAndAnOpenHoleAreErrorsWithFileAndLine() throws IOException {
        String unknown = template("\n<p>{{ say(\"page.verdikt\") }}</p>");
        assertThatThrownBy(() -> render(unknown))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith(place() + ", line 2: the template cannot be filled: there is no sentence "
                        + "'page.verdikt' in words.properties. Did you mean 'page.verdict'?");
        String open = template("<p>{{ say(\"page.foot\", \"nummer\", \"1\") }}</p>");
        assertThatThrownBy(() -> render(open))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith(place()
                        + ", line 1: the template cannot be filled: hole number of sentence page.foot stays open");
    }

    /** What the template engine names in its own words is found again in them: a new version of the engine may word it otherwise. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "{{ fact(report.hints) }} ; [fact] ; facts",
                "{{ report.identity.number|uper }} ; [uper] ; upper",
                "{% iff 1 %}{% endif %} ; iff ; if",
                "{% for a in report.findings %}{% enfor %} ; enfor ; endfor",
                "{{ picture(report.figures['cycles-mian'], 80) }} ; 'cycles-mian' ; cycles-main",
                "{% include 'macro.html' %} ; 'macro.html' ; macros.html"
            })
    void theNameThatWasProbablyMeantIsSaid(String body, String wrong, String meant) throws IOException {
        String template = template("{% import \"macros.html\" %}\n" + body);
        assertThatThrownBy(() -> render(template))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith(place() + ", line ")
                .hasMessageContaining(wrong)
                .hasMessageContaining("Did you mean '" + meant + "'? ");
    }

    @Test
    void anOpenTagOfTheTemplateLanguageIsAnErrorWithFileAndLine() throws IOException {
        String template = template("\n\n{% if report.findings is empty %}");
        assertThatThrownBy(() -> render(template))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith(place() + ", line 3: the template cannot be filled: ");
    }

    @Test
    void aTemplateCallsNothing() throws IOException {
        String template = template("{{ report.identity.getClass() }}");
        assertThatThrownBy(() -> render(template))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith(place() + ", line 1: the template cannot be filled: ");
    }

    @Test
    void anElementThatIsNotClosedIsAnError() throws IOException {
        String template = template("<p>open<br></p>");
        assertThatThrownBy(() -> render(template))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith(place() + ", line 1: the filled page is no well-formed XHTML: ")
                .hasMessageContaining("(its line 1: '");
    }

    @Test
    void aDocumentTypeIsRefusedAndWithItEveryOutsideEntity() throws IOException {
        String template =
                page("<!DOCTYPE html [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><html><body>&x;</body></html>");
        assertThatThrownBy(() -> render(template))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("DOCTYPE");
    }

    @Test
    void whatLiesOutsideTheFolderIsNeverFetched() throws IOException {
        Path outside = Files.createTempFile("outside", ".png");
        for (String source : new String[] {
            "http://example.org/a.png",
            "file:///etc/hostname",
            "../" + outside.getFileName(),
            outside.toString(),
            "/etc/hostname"
        }) {
            String template = template("<img src=\"" + source + "\" alt=\"x\"/>");
            assertThatThrownBy(() -> render(template))
                    .isInstanceOf(InputException.class)
                    .hasMessage(place() + ", line 1: the page names '" + source
                            + "', which is no file of the template folder. A "
                            + "template uses its own files only; nothing is fetched from elsewhere");
        }
        Files.delete(outside);
    }

    @Test
    void aLinkOutOfTheFolderIsNotFollowed() throws IOException {
        Files.createSymbolicLink(folder.resolve("in.png"), Path.of("/etc/hostname"));
        String template = template("<img src=\"in.png\" alt=\"x\"/>");
        assertThatThrownBy(() -> render(template)).isInstanceOf(InputException.class);
    }

    @Test
    void aFigureThatTheJobDoesNotHaveIsAnError() throws IOException {
        String template = template("<object data=\"cycle-main\" width=\"100\"></object>");
        assertThatThrownBy(() -> render(template))
                .isInstanceOf(InputException.class)
                .hasMessage(place()
                        + ", line 1: the page shows a figure 'cycle-main', which this report does not have. Did you mean 'cycles-main'? Ask first: "
                        + "{% if report.figures contains \"cycle-main\" %}");
    }

    @Test
    void aFigureWithoutWidthIsAnError() throws IOException {
        String template = template("<object data=\"cycles-main\"></object>");
        assertThatThrownBy(() -> render(template))
                .isInstanceOf(InputException.class)
                .hasMessage(place()
                        + ", line 1: the figure 'cycles-main' has no width in mm. Write for example width=\"120\"");
    }
}
