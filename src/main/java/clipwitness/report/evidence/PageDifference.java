package clipwitness.report.evidence;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.text.PDFTextStripper;

/** Where the pages of a report differ from the same pages printed again. */
public final class PageDifference {
    /** Letters of a line that are shown. */
    private static final int SHOWN = 90;

    private PageDifference() {}

    /**
     * The first difference that a reader would see, as a sentence; empty where each page holds the same text, lines and pictures.
     *
     * @param said the report
     * @param now  the report printed again
     */
    public static Optional<String> between(byte[] said, byte[] now) {
        try (PDDocument one = Loader.loadPDF(said);
                PDDocument other = Loader.loadPDF(now)) {
            if (one.getNumberOfPages() != other.getNumberOfPages()) {
                return Optional.of(
                        "it has " + one.getNumberOfPages() + " pages, the data give " + other.getNumberOfPages());
            }
            for (int page = 1; page <= one.getNumberOfPages(); page++) {
                Optional<String> difference = onPage(page, one, other);
                if (difference.isPresent()) {
                    return difference;
                }
            }
            return Optional.empty();
        } catch (IOException
                | RuntimeException
                | StackOverflowError e) { // the library throws many kinds over damaged pages
            return Optional.of("its pages cannot be read");
        }
    }

    /** Share of the lines of two documents that both have, 0 to 1: tells which template a report was made with. */
    public static double commonLines(byte[] said, byte[] now) {
        try (PDDocument one = Loader.loadPDF(said);
                PDDocument other = Loader.loadPDF(now)) {
            Set<String> all = lines(one);
            Set<String> common = lines(other);
            int together = all.size() + common.size();
            common.retainAll(all);
            return common.size() / Math.max(1.0, together - common.size());
        } catch (IOException | RuntimeException | StackOverflowError e) {
            return 0;
        }
    }

    private static Set<String> lines(PDDocument document) throws IOException {
        return new PDFTextStripper().getText(document).lines().collect(Collectors.toCollection(HashSet::new));
    }

    private static Optional<String> onPage(int page, PDDocument said, PDDocument now) throws IOException {
        List<String> one = lines(said, page);
        List<String> other = lines(now, page);
        for (int i = 0; i < Math.max(one.size(), other.size()); i++) {
            String here = i < one.size() ? one.get(i) : "";
            String there = i < other.size() ? other.get(i) : "";
            if (!here.equals(there)) {
                return Optional.of(
                        "page " + page + " says “" + shown(here) + "”, the data give “" + shown(there) + "”");
            }
        }
        return Arrays.equals(drawn(said.getPage(page - 1)), drawn(now.getPage(page - 1)))
                ? Optional.empty()
                : Optional.of("page " + page
                        + " has the text that the data give, but a figure, line or picture on it is drawn otherwise");
    }

    private static String shown(String line) {
        return line.length() > SHOWN ? line.substring(0, SHOWN) + "…" : line;
    }

    private static List<String> lines(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document).lines().collect(Collectors.toList());
    }

    /** Digest of what is drawn on a page: its content, and the pictures and forms that it names. */
    private static byte[] drawn(PDPage page) throws IOException {
        List<byte[]> parts = new ArrayList<>();
        try (InputStream contents = page.getContents()) {
            parts.add(contents.readAllBytes());
        }
        PDResources resources = page.getResources();
        List<COSName> names = new ArrayList<>();
        resources.getXObjectNames().forEach(names::add);
        names.sort(null);
        for (COSName name : names) {
            COSStream stream = resources.getXObject(name).getCOSObject();
            try (InputStream content = stream.createInputStream()) {
                parts.add(content.readAllBytes());
            }
        }
        MessageDigest digest = SignedMessage.digest();
        parts.forEach(digest::update);
        return digest.digest();
    }
}
