package clipwitness.report.paper;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * A filled page as it is laid out. Document types are refused, and with them every entity that could reach outside.
 *
 * @param document the page
 * @param lines    line of the filled page of each element, in document order
 */
record Page(Document document, List<Integer> lines) {
    private static final String NO_DOCTYPE = "http://apache.org/xml/features/disallow-doctype-decl";
    private static final String DOCTYPE = "<!DOCTYPE";

    /** Copies the lines. */
    Page {
        lines = List.copyOf(lines);
    }

    /** Line of the filled page of an element, by its place in document order from 0; 0 where it is not known. */
    int line(int element) {
        return element < lines.size() ? lines.get(element) : 0;
    }

    static Page parse(String text) throws PageException {
        try {
            SAXParserFactory first = SAXParserFactory.newDefaultInstance();
            first.setFeature(NO_DOCTYPE, true);
            PageLimits limits = new PageLimits();
            first.newSAXParser().parse(source(text), limits);
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature(NO_DOCTYPE, true);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new DefaultHandler());
            return new Page(builder.parse(source(text)), limits.lines());
        } catch (PageLimits.Limit e) {
            throw new PageException(
                    e.getLineNumber(), "the page cannot be printed: " + e.getMessage(), "Write it without");
        } catch (SAXParseException e) {
            throw malformed(text, e);
        } catch (SAXException | ParserConfigurationException e) {
            throw new IllegalArgumentException("the platform's XML reader cannot be used", e);
        } catch (IOException e) {
            throw new UncheckedIOException("reading from memory failed", e);
        }
    }

    private static InputSource source(String text) {
        return new InputSource(new StringReader(text));
    }

    private static PageException malformed(String text, SAXParseException e) {
        String line = line(text, e.getLineNumber());
        if (text.contains(DOCTYPE) && line.contains(DOCTYPE)) {
            return new PageException(
                    e.getLineNumber(),
                    "the page has a document type, '" + line + "'",
                    "Remove this line: a document type could fetch something from elsewhere");
        }
        return new PageException(
                e.getLineNumber(),
                "the filled page is no well-formed XHTML: " + e.getMessage() + " (its line " + e.getLineNumber() + ": '"
                        + line + "')",
                "Close every element and write & as &amp;");
    }

    private static String line(String text, int number) {
        return text.lines()
                .skip(Math.max(0, number - 1L))
                .findFirst()
                .orElse("")
                .strip();
    }
}
