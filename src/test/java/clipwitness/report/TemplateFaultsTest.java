package clipwitness.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.fault.InputException;
import clipwitness.fault.Problem;
import clipwitness.fixture.ExampleJob;
import clipwitness.report.page.PageBudget;
import clipwitness.report.page.TemplateSource;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a template may not ask for is its own fault, with file and line: never one of the program, and never without end. */
class TemplateFaultsTest {
    @TempDir
    private Path folder;

    private final List<Problem> warnings = new ArrayList<>();

    /** A page whose style begins on line 3 and whose body begins on line 5. */
    private void page(String style, String body) throws IOException {
        Files.writeString(folder.resolve("report.html"), """
                <html lang="en">
                <head><title>t</title>
                <style>%s</style></head>
                <body>
                %s
                </body></html>
                """.formatted(style, body));
    }

    private byte[] render(PageBudget budget) throws InputException {
        return ReportDocument.render(
                ExampleJob.good().results(),
                Map.of(),
                TemplateSource.find(folder.toString(), Path.of("")),
                new Printing(List.of(), "clipwitness 0.1.0", budget, warnings::add));
    }

    private void assertFault(String message) throws IOException {
        assertThatThrownBy(() -> render(PageBudget.USUAL))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith(folder.toRealPath().resolve(message).toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{% macro f() %}{{ f() }}{% endmacro %}{{ f() }} | 5: the template cannot be filled: it nests too deeply here",
                "{% include \"report.html\" %} | 5: the template cannot be filled: it nests too deeply here",
                "<p>{{ i18n(\"messages\", \"hello\") }}</p> | 5: the template cannot be filled: there is no bundle 'messages'",
                "{% for a in range(0, 2000000000) %}x{% endfor %} | 5: the template cannot be filled: a range holds at most",
                "{% for a in range(0, 99999) %}{% for b in range(0, 99999) %}{% endfor %}{% endfor %} | 5: the template cannot be filled: it does not end here",
                "{% macro f(n) %}{% if n > 0 %}{{ f(n - 1) }}{{ f(n - 1) }}{% endif %}{% endmacro %}{{ f(60) }} | 5: the template cannot be filled: it does not end here",
                "<p>{{ report.identity.number }}<br></p> | 5: the filled page is no well-formed XHTML",
                "<table><tr><td colspan=\"1000000\">a</td></tr></table> | 5: the page cannot be printed: colspan of an element td is '1000000'",
                "<svg xmlns=\"http://www.w3.org/2000/svg\"/> | 5: the page cannot be printed: an element svg would be left out",
                "<img src=\"data:image/png;base64,AAAA\" alt=\"x\"/> | 5: the picture 'data:image/png;base64,AAAA' cannot be read",
                "<table><tbody style=\"float:right\"><tr><td>a</td></tr></tbody></table> | 5: this element cannot be laid out"
            })
    void theFaultHasItsLine(String body, String message) throws IOException {
        page("", body);
        assertFault("report.html, line " + message);
    }

    @Test
    void elementsWithinElementsHaveABound() throws IOException {
        page("", "<div>".repeat(300) + "x" + "</div>".repeat(300));
        assertFault("report.html, line 5: the page cannot be printed: elements are nested more than 200 deep");
    }

    @Test
    void bracketsWithinBracketsHaveABound() throws IOException {
        page("", "{{ " + "(".repeat(200_000) + "1" + ")".repeat(200_000) + " }}");
        assertFault("report.html: the template cannot be filled: it nests too deeply. Look for a macro");
    }

    @Test
    void marginsThatLeaveNoRoomAreFoundInTheStyles() throws IOException {
        page("\n@page { margin: 200mm }", "<p>x</p>");
        assertFault(
                "report.html, line 4: the page cannot be laid out, not even without its content. Look at the size of the paper");
    }

    @Test
    void aFontAKilometreHighGoesBeyondThePagesThatADocumentMayHave() throws IOException {
        page("p { font-size: 1000000mm }", "<p>" + "word ".repeat(40) + "</p>");
        assertThatThrownBy(() -> render(new PageBudget(Duration.ofHours(1), 5)))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith(
                        folder.toRealPath().resolve("report.html") + ": the document has more than 5 pages")
                .hasMessageEndingWith("gets them with --pages");
    }

    /** Twenty million steps take longer than a millisecond on every machine. */
    @Test
    void aPageThatIsNotFinishedInItsTimeIsAFaultOfItsTemplate() throws IOException {
        page("", "{% for a in range(0, 99999) %}{% for b in range(0, 190) %}x{% endfor %}{% endfor %}");
        assertThatThrownBy(() -> render(new PageBudget(Duration.ofMillis(1), 400)))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith(folder.toRealPath().resolve("report.html") + ": the page is not finished after")
                .hasMessageEndingWith("gets it with --page-time");
    }

    @Test
    void fontsAndPicturesThatCannotBeReadAreNotLeftOutInSilence() throws IOException {
        Files.writeString(folder.resolve("x.ttf"), "no font at all");
        page("@font-face { font-family: Odd; src: url(x.ttf) }\np { font-family: Odd }", "<p>x</p>");
        assertFault("report.html, line 3: the font 'Odd' cannot be read. Save it again as a TrueType font");
        Files.writeString(folder.resolve("x.png"), "no picture at all");
        page("", "<img src=\"x.png\" alt=\"x\"/>");
        assertFault("report.html, line 5: the picture 'x.png' cannot be read. Save it again");
        Files.write(
                folder.resolve("x.png"), new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 0, 0, 0, 13});
        assertFault("x.png: this picture is damaged. Save it again");
    }

    @Test
    void aDocumentTypeIsNamedWithItsLine() throws IOException {
        Files.writeString(
                folder.resolve("report.html"), "\n<!DOCTYPE html>\n<html lang=\"en\"><body><p>x</p></body></html>");
        assertFault("report.html, line 2: the page has a document type, '<!DOCTYPE html>'. Remove this line");
    }

    @Test
    void theMarkThatSomeEditorsPutBeforeATextIsNoPartOfIt() throws Exception {
        page("", "<p>{{ say(\"verdict.pass\") }}</p>");
        String text = "\uFEFF" + Files.readString(folder.resolve("report.html"));
        Files.writeString(folder.resolve("words.properties"), "\uFEFFverdict.pass = Bestanden\n");
        for (var encoding : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
            Files.write(folder.resolve("report.html"), text.getBytes(encoding));
            try (Rendered report = Rendered.of(ExampleJob.good().results(), folder.toString())) {
                assertThat(report.text()).isEqualTo("Bestanden ");
            }
        }
    }

    @Test
    void aStyleThatTheRendererDoesNotKnowIsLeftOutWithAWarning() throws Exception {
        page("\np { columns: 3 }\nb { width: 1foo }", "<p>x</p>");
        assertThat(render(PageBudget.USUAL)).isNotEmpty();
        String place = folder.toRealPath().resolve("report.html").toString();
        assertThat(warnings.stream().map(Problem::message))
                .hasSize(2)
                .anySatisfy(m -> assertThat(m)
                        .startsWith(
                                place + ", line 4: this style is left out: columns is an unrecognized CSS property. "))
                .anySatisfy(m -> assertThat(m)
                        .startsWith(place + ", line 5: this style is left out: Unsupported CSS unit foo. "));
    }

    @Test
    void theBuiltInTemplatesLeaveNoStyleOut() throws Exception {
        for (String name : List.of("customer", "bench")) {
            ReportDocument.render(
                    ExampleJob.good().results(),
                    StandInFigure.all(),
                    TemplateSource.find(name, Path.of("")),
                    new Printing(List.of(), "clipwitness 0.1.0", PageBudget.USUAL, warnings::add));
        }
        assertThat(warnings).isEmpty();
    }
}
