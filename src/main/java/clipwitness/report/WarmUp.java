package clipwitness.report;

import clipwitness.fault.InputException;
import clipwitness.figure.canvas.Canvas;
import clipwitness.figure.canvas.Figure;
import clipwitness.report.page.PageTemplate;
import clipwitness.report.page.TemplateSource;
import clipwitness.report.paper.DocumentInfo;
import clipwitness.report.paper.PageException;
import clipwitness.report.paper.PdfPrinter;
import clipwitness.words.WordBundle;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;

/** Prints a page that is discarded, so that the libraries are loaded while another core still reads captures. */
final class WarmUp {
    private static final String PAGE = """
            <html lang="en"><head><title>t</title><link rel="stylesheet" href="base.css"/>
            <bookmarks><bookmark name="a" href="#a"/></bookmarks></head>
            <body><div class="foot"><b>b</b></div><h2 id="a">h</h2><p>p <b>b</b> ± Ω</p><ul><li>l</li></ul>
            <object data="line" width="50"></object>
            <p class="caption">c</p><table class="figures"><thead><tr><th scope="col">h</th></tr></thead>
            <tbody><tr><th scope="row">r</th></tr></tbody></table></body></html>
            """;

    private static final AtomicBoolean DONE = new AtomicBoolean();

    private WarmUp() {}

    /** Prints the page, once in the life of the program. */
    static void run() throws InputException, PageException {
        if (DONE.getAndSet(true)) {
            return;
        }
        TemplateSource template = TemplateSource.find("customer", Path.of(""));
        new PageTemplate(template, WordBundle.builtIn()).check();
        DocumentInfo info = new DocumentInfo("t", "a", "s", "en", LocalDate.EPOCH, "s", "0".repeat(64));
        new PdfPrinter(template::any, Map.of("line", new Line())).print(PAGE, info, List.of());
    }

    private static final class Line implements Figure {
        @Override
        public String title() {
            return "t";
        }

        @Override
        public String finding() {
            return "f";
        }

        @Override
        public double aspect() {
            return 0.5;
        }

        @Override
        public void paint(Canvas canvas, double width, double height) {
            canvas.graphics().setPaint(Color.BLACK);
            canvas.graphics().setStroke(new BasicStroke(1));
            canvas.graphics().draw(new Line2D.Double(0, 0, width, height));
            canvas.text("t", 0, 0, 8, false, Canvas.Anchor.MIDDLE, 0, Color.BLACK);
        }
    }
}
