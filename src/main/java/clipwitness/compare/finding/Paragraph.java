package clipwitness.compare.finding;

import java.util.List;

/**
 * Findings that are read one after the other, as one item of a list.
 *
 * @param findings one or more
 */
public record Paragraph(List<Finding> findings) {
    /** Copies what it is given. */
    public Paragraph {
        findings = List.copyOf(findings);
        if (findings.isEmpty()) {
            throw new IllegalArgumentException("a paragraph needs a finding");
        }
    }

    /** The findings, if there are any. */
    public static List<Paragraph> of(List<Finding> findings) {
        return findings.isEmpty() ? List.of() : List.of(new Paragraph(findings));
    }
}
