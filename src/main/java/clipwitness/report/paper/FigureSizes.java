package clipwitness.report.paper;

import clipwitness.fault.Nearest;
import clipwitness.figure.canvas.Figure;
import com.openhtmltopdf.extend.FSDOMMutator;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Gives each figure on the page its height, from the width in mm that the page asks for, and its alternative text. */
final class FigureSizes implements FSDOMMutator {
    private static final String OBJECT = "object";
    private static final Pattern WIDTH = Pattern.compile("\\d{1,3}(\\.\\d+)?");

    private final Map<String, Figure> figures;
    private final Glyphs glyphs;

    FigureSizes(Map<String, Figure> figures, Glyphs glyphs) {
        this.figures = figures;
        this.glyphs = glyphs;
    }

    @Override
    public void mutateDocument(Document document) {
        NodeList objects = document.getElementsByTagName(OBJECT);
        for (int i = 0; i < objects.getLength(); i++) {
            Element object = (Element) objects.item(i);
            complete(object, figures.get(object.getAttribute("data")));
        }
    }

    private void complete(Element object, Figure figure) {
        double width = Double.parseDouble(object.getAttribute("width"));
        object.setAttribute(
                "style", String.format(Locale.ROOT, "width:%.2fmm;height:%.2fmm", width, width * figure.aspect()));
        object.removeAttribute("width");
        object.setAttribute("alt", glyphs.printable(figure.finding()));
    }

    /**
     * Looks for figures that are not there or have no width.
     *
     * @throws PageException if there is one
     */
    void check(Page page) throws PageException {
        NodeList all = page.document().getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            if (element.getTagName().equals(OBJECT)) {
                check(element, page.line(i));
            }
        }
    }

    private void check(Element object, int line) throws PageException {
        String name = object.getAttribute("data");
        if (!figures.containsKey(name)) {
            String meant = Nearest.slipOf(name, new TreeSet<>(figures.keySet()))
                    .map(n -> "Did you mean '" + n + "'? ")
                    .orElse("");
            throw new PageException(
                    line,
                    "the page shows a figure '" + name + "', which this report does not have",
                    meant + "Ask first: {% if report.figures contains \"" + name + "\" %}");
        }
        if (!WIDTH.matcher(object.getAttribute("width")).matches()) {
            throw new PageException(
                    line, "the figure '" + name + "' has no width in mm", "Write for example width=\"120\"");
        }
    }
}
