package clipwitness.report.paper;

import clipwitness.figure.Figure;
import com.openhtmltopdf.extend.FSDOMMutator;
import java.util.Locale;
import java.util.Map;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Gives each figure on the page its height, from the width in mm that the page asks for, and its alternative text. */
final class FigureSizes implements FSDOMMutator {
    private final Map<String, Figure> figures;
    private final Glyphs glyphs;

    FigureSizes(Map<String, Figure> figures, Glyphs glyphs) {
        this.figures = figures;
        this.glyphs = glyphs;
    }

    @Override
    public void mutateDocument(Document document) {
        NodeList objects = document.getElementsByTagName("object");
        for (int i = 0; i < objects.getLength(); i++) {
            Element object = (Element) objects.item(i);
            Figure figure = figures.get(object.getAttribute("data"));
            if (figure != null) {
                complete(object, figure);
            }
        }
    }

    private void complete(Element object, Figure figure) {
        double width = Double.parseDouble(object.getAttribute("width"));
        object.setAttribute(
                "style", String.format(Locale.ROOT, "width:%.2fmm;height:%.2fmm", width, width * figure.aspect()));
        object.removeAttribute("width");
        object.setAttribute("alt", glyphs.printable(figure.finding()));
    }
}
