package clipwitness.report.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.xml.sax.Attributes;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/** Reads a filled page once before it is laid out, and stops at the line where it asks for more than a layout can hold. */
final class PageLimits extends DefaultHandler {
    /** The built-in templates nest about ten. */
    private static final int MOST_NESTED = 200;

    /** A page of a hundred captures has some ten thousand. */
    private static final int MOST_ELEMENTS = 500_000;

    /** As many columns as browsers take at most (HTML Standard, 4.9.11, attribute colspan). */
    private static final int MOST_SPANNED = 1000;

    private static final List<String> SPANS = List.of("colspan", "rowspan", "span");

    private static final Set<String> UNPRINTABLE =
            Set.of("svg", "math", "canvas", "video", "audio", "iframe", "embed", "script");

    private final List<Integer> lines = new ArrayList<>();
    private Locator locator;
    private int nested;

    @Override
    public void setDocumentLocator(Locator place) {
        locator = place;
    }

    @Override
    public void startElement(String uri, String local, String name, Attributes attributes) throws SAXException {
        nested++;
        lines.add(locator.getLineNumber());
        if (nested > MOST_NESTED) {
            throw limit("elements are nested more than " + MOST_NESTED + " deep");
        }
        if (lines.size() > MOST_ELEMENTS) {
            throw limit("there are more than " + MOST_ELEMENTS + " elements");
        }
        if (name.equals("form")) {
            throw limit("an element form would make a PDF that sends away what is written into it");
        }
        if (UNPRINTABLE.contains(name)) {
            throw limit("an element " + name + " would be left out");
        }
        for (String span : SPANS) {
            String value = attributes.getValue(span);
            if (value != null && !spansFew(value.strip())) {
                throw limit(span + " of an element " + name + " is '" + shortened(value)
                        + "', but must be a number from 1 to " + MOST_SPANNED);
            }
        }
    }

    @Override
    public void endElement(String uri, String local, String name) {
        nested--;
    }

    /** Whatever the parser itself finds is found again by the one that reads the document. */
    @Override
    public void fatalError(SAXParseException e) throws SAXException {
        throw e;
    }

    /** Line on which the start tag of each element ends, in document order. */
    List<Integer> lines() {
        return lines;
    }

    private static boolean spansFew(String value) {
        return value.matches("\\d{1,4}") && Integer.parseInt(value) >= 1 && Integer.parseInt(value) <= MOST_SPANNED;
    }

    private static String shortened(String value) {
        return value.length() <= 20 ? value : value.substring(0, 20) + "…";
    }

    private SAXException limit(String what) {
        return new Limit(what, locator);
    }

    /** The page asks for too much. */
    static final class Limit extends SAXParseException {
        private static final long serialVersionUID = 1L;

        Limit(String what, Locator place) {
            super(what, place);
        }
    }
}
