package clipwitness.report;

import clipwitness.report.paper.DocumentInfo;
import clipwitness.report.paper.PageException;
import clipwitness.report.paper.PdfPrinter;
import io.pebbletemplates.pebble.PebbleEngine;
import io.pebbletemplates.pebble.loader.StringLoader;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A one-word document, made and thrown away: it loads fonts, template engine and renderer while the other core reads captures. It
 * changes nothing but the time that the first report takes.
 */
final class WarmUp {
    private static final String PAGE = """
            <html lang="en"><head><title>x</title><style>
            @page { size: A4; @bottom-right { content: counter(page); font-family: "Source Sans 3" } }
            body { font-family: "Source Sans 3" } td { border-top: 1pt solid #ccc; padding: 2pt }
            </style></head><body><h1>{{ word }}</h1><table><tr><td>{{ word }}</td></tr></table>
            {% for w in word %}<p>{{ w }}</p>{% endfor %}</body></html>
            """;

    private WarmUp() {}

    static void run() {
        StringWriter page = new StringWriter();
        try {
            PebbleEngine engine =
                    new PebbleEngine.Builder().loader(new StringLoader()).build();
            engine.getTemplate(PAGE).evaluate(page, Map.of("word", List.of("x")));
            new PdfPrinter(name -> Optional.empty(), Map.of())
                    .print(
                            page.toString(),
                            new DocumentInfo("x", "x", "x", "en", LocalDate.EPOCH, "x", "0".repeat(64)),
                            List.of());
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        } catch (PageException e) {
            throw new IllegalStateException("the page of the warm-up is well-formed", e);
        }
    }
}
