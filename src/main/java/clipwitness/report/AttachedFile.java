package clipwitness.report;

import clipwitness.report.paper.EmbeddedFile;
import java.util.Locale;
import java.util.Objects;

/** A file to be attached to the PDF. */
public final class AttachedFile {
    private final String name;
    private final byte[] content;

    /**
     * A file.
     *
     * @param name    file name; its extension says of which kind it is
     * @param content bytes, copied
     */
    public AttachedFile(String name, byte[] content) {
        this.name = Objects.requireNonNull(name, "name");
        this.content = content.clone();
    }

    /** The file as the document takes it: results are data, what they were made from is source. */
    EmbeddedFile embedded() {
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.endsWith("-results.json")) {
            return file("application/json", "Results of this report for machines", EmbeddedFile.Relationship.DATA);
        }
        if (lower.endsWith("-results.csv")) {
            return file("text/csv", "Results of this report as a table", EmbeddedFile.Relationship.DATA);
        }
        return lower.endsWith(".csv")
                ? file("text/csv", "Table of the captures", EmbeddedFile.Relationship.SOURCE)
                : file("application/yaml", "Job sheet", EmbeddedFile.Relationship.SOURCE);
    }

    private EmbeddedFile file(String mediaType, String description, EmbeddedFile.Relationship relationship) {
        return new EmbeddedFile(name, mediaType, description, relationship, content);
    }
}
