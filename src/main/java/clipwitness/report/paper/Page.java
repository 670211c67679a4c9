package clipwitness.report.paper;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/** Reads a filled page. Document types are refused, and with them every entity that could reach outside. */
final class Page {
    private static final String NO_DOCTYPE = "http://apache.org/xml/features/disallow-doctype-decl";

    private Page() {}

    static Document parse(String text) throws PageException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature(NO_DOCTYPE, true);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new DefaultHandler());
            return builder.parse(new InputSource(new StringReader(text)));
        } catch (SAXParseException e) {
            throw new PageException(
                    "the filled page is no well-formed XHTML: " + e.getMessage() + " (its line " + e.getLineNumber()
                            + ": '" + line(text, e.getLineNumber()) + "')",
                    "Close every element and write & as &amp;");
        } catch (SAXException | ParserConfigurationException e) {
            throw new IllegalArgumentException("the platform's XML reader cannot be used", e);
        } catch (IOException e) {
            throw new UncheckedIOException("reading from memory failed", e);
        }
    }

    private static String line(String text, int number) {
        return text.lines()
                .skip(Math.max(0, number - 1L))
                .findFirst()
                .orElse("")
                .strip();
    }
}
