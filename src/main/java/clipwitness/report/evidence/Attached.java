package clipwitness.report.evidence;

import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.common.PDNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/**
 * The files that are attached to a document.
 *
 * @param files  contents by name
 * @param faults what is wrong, a clause each that begins with the name
 */
record Attached(Map<String, byte[]> files, List<String> faults) {
    private static final int MOST_FILES = 64;
    private static final int LONGEST = 64 << 20;
    private static final int DEEPEST = 8;
    private static final COSName CHECKSUM = COSName.getPDFName("CheckSum");

    static Attached to(PDDocument document) {
        Attached attached = new Attached(new TreeMap<>(), new ArrayList<>());
        PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
        if (names != null && names.getEmbeddedFiles() != null) {
            try {
                attached.add(names.getEmbeddedFiles(), 0);
            } catch (IOException e) {
                attached.faults.add("the list of attachments is damaged");
            }
        }
        return attached;
    }

    private void add(PDNameTreeNode<PDComplexFileSpecification> node, int depth) throws IOException {
        Map<String, PDComplexFileSpecification> here = node.getNames();
        if (here != null) {
            for (Map.Entry<String, PDComplexFileSpecification> e : here.entrySet()) {
                add(e.getKey(), e.getValue());
            }
        }
        List<PDNameTreeNode<PDComplexFileSpecification>> kids = node.getKids();
        if (kids != null && depth < DEEPEST) {
            for (PDNameTreeNode<PDComplexFileSpecification> kid : kids) {
                add(kid, depth + 1);
            }
        }
    }

    private void add(String name, PDComplexFileSpecification specification) {
        if (files.size() >= MOST_FILES) {
            return;
        }
        if (name.contains("/") || name.contains("\\") || name.contains("..")) {
            faults.add(name + ": no attachment of this program has such a name");
            return;
        }
        PDEmbeddedFile file = specification == null ? null : embedded(specification);
        Optional<byte[]> content = file == null ? Optional.empty() : Packed.content(file.getCOSObject(), LONGEST);
        if (content.isEmpty()) {
            faults.add(name + ": the attachment is not there, damaged, or packed as this program never does");
            return;
        }
        files.put(name, content.get());
        if (!isAsMarked(file, content.get())) {
            faults.add(name + ": the attachment was changed after the report was made");
        }
    }

    private static PDEmbeddedFile embedded(PDComplexFileSpecification specification) {
        PDEmbeddedFile file = specification.getEmbeddedFileUnicode();
        return file == null ? specification.getEmbeddedFile() : file;
    }

    /** Size and check sum (ISO 32000-1, table 46) where the document states them; earlier versions of the program stated no check sum. */
    private static boolean isAsMarked(PDEmbeddedFile file, byte[] content) {
        boolean size = file.getSize() < 0 || file.getSize() == content.length;
        var parameters = file.getCOSObject().getCOSDictionary(COSName.PARAMS);
        return size
                && !(parameters != null
                        && parameters.getDictionaryObject(CHECKSUM) instanceof COSString sum
                        && !MessageDigest.isEqual(sum.getBytes(), md5(content)));
    }

    private static byte[] md5(byte[] content) {
        try {
            return MessageDigest.getInstance("MD5").digest(content);
        } catch (NoSuchAlgorithmException impossible) { // every Java platform has it
            throw new IllegalStateException(impossible);
        }
    }
}
