package clipwitness.report;

import clipwitness.figure.Figure;
import clipwitness.figure.TraceFigure;
import clipwitness.measure.junction.NamedDevice;
import clipwitness.quantity.NumberText;
import clipwitness.report.paper.DocumentInfo;
import clipwitness.report.paper.PageException;
import clipwitness.report.paper.PdfPrinter;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** A ranking on one page, to keep in the drawer with the parts: all curves, linear and logarithmic, and the pairs. */
public final class DrawerSheet {
    private static final String FIGURE = "devices";
    private static final int MOST_PAIRS = 24;
    private static final String STYLE = """
            @page { size: A4; }
            body { font-size: 9pt; }
            h1 { font-size: 15pt; margin: 0 0 2mm 0; }
            h2 { margin: 3mm 0 1mm 0; }
            """;

    private DrawerSheet() {}

    /**
     * The page as a PDF.
     *
     * @param ranking  ranking, one device of which conducts or more
     * @param software program and version
     */
    public static byte[] bytes(Ranking ranking, String software) {
        Figure figure = TraceFigure.of(ranking.devices(), NumberText.in("en"));
        DocumentInfo info = new DocumentInfo(
                "Pairs of traced devices",
                "",
                "Ranking of traced devices into pairs",
                "en",
                LocalDate.EPOCH,
                software,
                ranking.digest());
        try {
            return new PdfPrinter(TemplateSource::common, Map.of(FIGURE, figure))
                    .print(page(ranking, figure, software), info, List.of());
        } catch (PageException e) {
            throw new IllegalArgumentException("the program's own page has a fault", e);
        }
    }

    /** Whether a device has a curve that the page can show. */
    public static boolean hasCurves(Ranking ranking) {
        return ranking.devices().stream().anyMatch(TraceFigure::conducts);
    }

    private static String page(Ranking ranking, Figure figure, String software) {
        StringBuilder page = new StringBuilder();
        page.append("<html lang=\"en\"><head><title>Pairs of traced devices</title>")
                .append("<link rel=\"stylesheet\" href=\"base.css\" /><style>")
                .append(STYLE)
                .append("</style><bookmarks><bookmark name=\"Pairs\" href=\"#pairs\" /></bookmarks></head><body>")
                .append("<div class=\"foot\"><b>Pairs of traced devices</b></div>")
                .append("<h1>Pairs of traced devices</h1><div class=\"figure\"><p class=\"figure-title\">")
                .append(PageTemplate.escaped(figure.title()))
                .append("</p><object data=\"" + FIGURE + "\" width=\"165\"></object></div>")
                .append("<h2 id=\"pairs\">Pairs, smallest mismatch first</h2>")
                .append(
                        "<table class=\"list\"><thead><tr><th scope=\"col\">Pair</th><th scope=\"col\">Mismatch, rms</th>")
                .append("<th scope=\"col\">At 1 mA</th><th scope=\"col\">Remark</th></tr></thead><tbody>");
        ranking.pairs().stream().limit(MOST_PAIRS).forEach(p -> row(page, p));
        page.append("</tbody></table>");
        rest(page, ranking);
        page.append("<p class=\"small quiet\">Made with ")
                .append(PageTemplate.escaped(software))
                .append(". Digest of the exports: ")
                .append(ranking.digest())
                .append("</p></body></html>");
        return page.toString();
    }

    private static void row(StringBuilder page, RankedPair ranked) {
        String remark = String.join(
                "; ",
                List.of(ranked.forecast().map(RankingWords::forecast).orElse(""), RankingWords.remark(ranked.pair()))
                        .stream()
                        .filter(s -> !s.isEmpty())
                        .toList());
        page.append("<tr><th scope=\"row\">")
                .append(PageTemplate.escaped(String.join(" and ", ranked.pair().devices())))
                .append("</th><td>")
                .append(PageTemplate.escaped(RankingWords.volts(ranked.pair().mismatch())))
                .append("</td><td>")
                .append(PageTemplate.escaped(RankingWords.volts(ranked.pair().mismatchAt1mA())))
                .append("</td><td>")
                .append(PageTemplate.escaped(remark))
                .append("</td></tr>");
    }

    private static void rest(StringBuilder page, Ranking ranking) {
        int more = ranking.pairs().size() - MOST_PAIRS;
        if (more > 0) {
            page.append("<p class=\"small\">And ").append(more).append(" pairs more.</p>");
        }
        if (!ranking.left().isEmpty()) {
            page.append("<p class=\"small\">Left over: ")
                    .append(PageTemplate.escaped(String.join(", ", ranking.left())))
                    .append(".</p>");
        }
        for (NamedDevice d : ranking.devices()) {
            if (!d.result().refusal().isEmpty()) {
                page.append("<p class=\"small\">")
                        .append(PageTemplate.escaped(
                                d.name() + ": " + d.result().refusal()))
                        .append(".</p>");
            }
        }
    }
}
