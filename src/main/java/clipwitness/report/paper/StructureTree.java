package clipwitness.report.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;

/**
 * Puts right what a document says of its own structure. A table of the page that has no header cell only sets things side by side: a
 * reader that speaks would announce its rows and columns, so it becomes a plain division (ISO 14289-1, 7.5). Parts of tables that hold nothing are left out.
 * So are marks around nothing on the pages: the renderer makes one for the background of each box, of which a long report has ten thousands.
 */
final class StructureTree {
    private static final COSName TYPE = COSName.S;
    private static final COSName KIDS = COSName.K;
    private static final COSName DIVISION = COSName.getPDFName("Div");
    private static final COSName TABLE = COSName.getPDFName("Table");
    private static final COSName HEADER_CELL = COSName.getPDFName("TH");
    private static final COSName ROW = COSName.getPDFName("TR");
    private static final COSName CELL = COSName.getPDFName("TD");
    private static final Set<COSName> GROUPS =
            Set.of(COSName.getPDFName("THead"), COSName.getPDFName("TBody"), COSName.getPDFName("TFoot"));

    /** A mark around nothing, and what names the properties of one. */
    private static final Pattern EMPTY = Pattern.compile("/Artifact /Prop\\d+ BDC\nEMC\n");

    private static final Pattern PROPERTY = Pattern.compile("/(Prop\\d+) BDC\n");

    private StructureTree() {}

    static void tidy(PDDocument document) throws IOException {
        tidy(document.getDocumentCatalog().getStructureTreeRoot().getCOSObject());
        for (PDPage page : document.getPages()) {
            leaveOutEmptyMarks(document, page);
        }
    }

    private static void leaveOutEmptyMarks(PDDocument document, PDPage page) throws IOException {
        String content;
        try (InputStream in = page.getContents()) {
            content = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        }
        String rest = EMPTY.matcher(content).replaceAll("");
        PDStream stream = new PDStream(document);
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(rest.getBytes(StandardCharsets.ISO_8859_1));
        }
        page.setContents(stream);
        if (rest.length() < content.length()) {
            keepProperties(page, rest);
        }
    }

    /** Properties that no mark names any more go, too. */
    private static void keepProperties(PDPage page, String content) {
        Set<String> named =
                PROPERTY.matcher(content).results().map(m -> m.group(1)).collect(Collectors.toSet());
        COSDictionary properties = page.getResources().getCOSObject().getCOSDictionary(COSName.PROPERTIES);
        List<COSName> left = properties.keySet().stream()
                .filter(n -> !named.contains(n.getName()))
                .toList();
        left.forEach(properties::removeItem);
    }

    private static void tidy(COSDictionary element) {
        List<COSDictionary> kids = kids(element);
        kids.forEach(StructureTree::tidy);
        if (element.getDictionaryObject(KIDS) instanceof COSArray array) {
            kids.stream()
                    .filter(k -> GROUPS.contains(type(k)) && kids(k).isEmpty())
                    .forEach(array::remove);
        }
        if (TABLE.equals(type(element)) && !hasHeaderCell(element)) {
            divide(element);
        }
    }

    private static COSName type(COSDictionary element) {
        return element.getCOSName(TYPE);
    }

    /** Elements directly below one; content has no type. */
    private static List<COSDictionary> kids(COSDictionary element) {
        List<COSDictionary> kids = new ArrayList<>();
        COSBase held = element.getDictionaryObject(KIDS);
        if (held instanceof COSDictionary one && type(one) != null) {
            kids.add(one);
        }
        if (held instanceof COSArray array) {
            for (int i = 0; i < array.size(); i++) {
                if (array.getObject(i) instanceof COSDictionary one && type(one) != null) {
                    kids.add(one);
                }
            }
        }
        return kids;
    }

    /** Groups and rows of a table lead to its cells; what is in a cell, another table for instance, is not looked at. */
    private static boolean hasHeaderCell(COSDictionary element) {
        return kids(element).stream().anyMatch(k -> HEADER_CELL.equals(type(k)) || (isPart(k) && hasHeaderCell(k)));
    }

    private static boolean isPart(COSDictionary element) {
        return GROUPS.contains(type(element)) || ROW.equals(type(element));
    }

    private static void divide(COSDictionary element) {
        for (COSDictionary kid : kids(element)) {
            if (isPart(kid)) {
                divide(kid);
            } else if (CELL.equals(type(kid))) {
                become(kid);
            }
        }
        become(element);
    }

    /** A division has no attributes of tables. */
    private static void become(COSDictionary element) {
        element.setItem(TYPE, DIVISION);
        element.removeItem(COSName.A);
    }
}
