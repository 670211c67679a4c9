package clipwitness.report;

import clipwitness.fault.InputException;
import clipwitness.figure.TraceFigure;
import clipwitness.figure.canvas.Figure;
import clipwitness.report.data.Ranking;
import clipwitness.report.page.PageTemplate;
import clipwitness.report.page.TemplateSource;
import clipwitness.report.paper.DocumentInfo;
import clipwitness.report.paper.PageException;
import clipwitness.report.paper.PdfPrinter;
import clipwitness.words.Speech;
import clipwitness.words.WordBundle;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** A ranking on one page, to keep in the drawer with the parts: all curves, linear and logarithmic, and the pairs. */
public final class DrawerSheet {
    private static final String FIGURE = "devices";

    private DrawerSheet() {}

    /**
     * The page as a PDF.
     *
     * @param ranking  ranking, one device of which conducts or more
     * @param software program and version
     */
    public static byte[] bytes(Ranking ranking, String software) {
        Figure figure = TraceFigure.of(ranking.devices(), Speech.ENGLISH);
        DocumentInfo info = new DocumentInfo(
                "Pairs of traced devices",
                "",
                "Ranking of traced devices into pairs",
                "en",
                LocalDate.EPOCH,
                software,
                ranking.digest());
        TemplateSource template = TemplateSource.drawer();
        try {
            String page = new PageTemplate(template, WordBundle.builtIn())
                    .fill(DrawerPage.of(ranking, figure, software))
                    .text();
            return new PdfPrinter(template::any, Map.of(FIGURE, figure)).print(page, info, List.of());
        } catch (InputException | PageException e) {
            throw new IllegalArgumentException("the program's own template has a fault", e);
        }
    }

    /** Whether a device has a curve that the page can show. */
    public static boolean hasCurves(Ranking ranking) {
        return ranking.devices().stream().anyMatch(TraceFigure::conducts);
    }
}
