package clipwitness.report.paper;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Calendar;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** Puts files into a document, as associated files after ISO 19005-3 (PDF/A-3), annex E; sorted by name. */
final class Attachments {
    private static final COSName RELATIONSHIP = COSName.getPDFName("AFRelationship");
    private static final COSName ASSOCIATED_FILES = COSName.getPDFName("AF");

    private static final COSName CHECKSUM = COSName.getPDFName("CheckSum");

    private Attachments() {}

    static void attach(PDDocument document, List<EmbeddedFile> files, Calendar date) throws IOException {
        if (files.isEmpty()) {
            return;
        }
        Map<String, PDComplexFileSpecification> names = new TreeMap<>();
        COSArray associated = new COSArray();
        for (EmbeddedFile file :
                files.stream().sorted(Comparator.comparing(EmbeddedFile::name)).toList()) {
            PDComplexFileSpecification specification = specification(document, file, date);
            names.put(file.name(), specification);
            associated.add(specification.getCOSObject());
        }
        PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
        tree.setNames(names);
        PDDocumentNameDictionary dictionary = new PDDocumentNameDictionary(document.getDocumentCatalog());
        dictionary.setEmbeddedFiles(tree);
        document.getDocumentCatalog().setNames(dictionary);
        document.getDocumentCatalog().getCOSObject().setItem(ASSOCIATED_FILES, associated);
    }

    private static PDComplexFileSpecification specification(PDDocument document, EmbeddedFile file, Calendar date)
            throws IOException {
        byte[] content = file.content();
        PDEmbeddedFile embedded = new PDEmbeddedFile(document, new ByteArrayInputStream(content), COSName.FLATE_DECODE);
        embedded.setSubtype(file.mediaType());
        embedded.setSize(content.length);
        embedded.getCOSObject().getCOSDictionary(COSName.PARAMS).setItem(CHECKSUM, new COSString(md5(content)));
        embedded.setCreationDate(date);
        embedded.setModDate(date);
        PDComplexFileSpecification specification = new PDComplexFileSpecification();
        specification.setFile(file.name());
        specification.setFileUnicode(file.name());
        specification.setFileDescription(file.description());
        specification.setEmbeddedFile(embedded);
        specification.setEmbeddedFileUnicode(embedded);
        specification
                .getCOSObject()
                .setItem(RELATIONSHIP, COSName.getPDFName(file.relationship().pdfName()));
        return specification;
    }

    /** The check sum that ISO 32000-1, table 46, has for an embedded file; it shows a change, and guards against nobody. */
    private static byte[] md5(byte[] content) {
        try {
            return MessageDigest.getInstance("MD5").digest(content);
        } catch (NoSuchAlgorithmException impossible) { // every Java platform has it
            throw new IllegalStateException(impossible);
        }
    }
}
