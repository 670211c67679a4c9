package clipwitness.report.paper;

import java.util.Objects;

/** A file that is attached to the PDF. */
public final class EmbeddedFile {
    private final String name;
    private final String mediaType;
    private final String description;
    private final Relationship relationship;
    private final byte[] content;

    /**
     * A file.
     *
     * @param name         file name
     * @param mediaType    for example {@code text/csv}
     * @param description  a phrase for the reader
     * @param relationship what it is to the document
     * @param content      bytes, copied
     */
    public EmbeddedFile(String name, String mediaType, String description, Relationship relationship, byte[] content) {
        this.name = Objects.requireNonNull(name, "name");
        this.mediaType = Objects.requireNonNull(mediaType, "mediaType");
        this.description = Objects.requireNonNull(description, "description");
        this.relationship = Objects.requireNonNull(relationship, "relationship");
        this.content = content.clone();
    }

    String name() {
        return name;
    }

    String mediaType() {
        return mediaType;
    }

    String description() {
        return description;
    }

    Relationship relationship() {
        return relationship;
    }

    byte[] content() {
        return content.clone();
    }

    /** What an attachment is to the document (PDF 2.0, 7.11.3, AFRelationship). */
    public enum Relationship {
        /** What the document was made from. */
        SOURCE("Source"),
        /** The same results, for machines. */
        DATA("Data");

        private final String pdfName;

        Relationship(String pdfName) {
            this.pdfName = pdfName;
        }

        String pdfName() {
            return pdfName;
        }
    }
}
