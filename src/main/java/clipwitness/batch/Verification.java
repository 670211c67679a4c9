package clipwitness.batch;

import java.util.ArrayList;
import java.util.List;

/** What is known of a report after it was looked at: statements in the order in which they were found. */
public final class Verification {
    private final List<Statement> statements = new ArrayList<>();

    /** How a statement counts. */
    public enum Kind {
        /** Something agrees. */
        HOLDS,
        /** Something does not agree: the answer is no. */
        DIFFERS,
        /** Something that the answer needs could not be looked at. */
        OPEN,
        /** Something that was not looked at and that the answer does not need. */
        NOTE
    }

    /**
     * One statement.
     *
     * @param kind how it counts
     * @param text a sentence that names the file
     */
    public record Statement(Kind kind, String text) {}

    void holds(String text) {
        statements.add(new Statement(Kind.HOLDS, text));
    }

    void differs(String text) {
        statements.add(new Statement(Kind.DIFFERS, text));
    }

    void open(String text) {
        statements.add(new Statement(Kind.OPEN, text));
    }

    void note(String text) {
        statements.add(new Statement(Kind.NOTE, text));
    }

    /** All statements. */
    public List<Statement> statements() {
        return List.copyOf(statements);
    }

    /** Whether something differs. */
    public boolean differ() {
        return has(Kind.DIFFERS);
    }

    /** Whether nothing differs, but something could not be looked at. */
    public boolean isOpen() {
        return !differ() && has(Kind.OPEN);
    }

    private boolean has(Kind kind) {
        return statements.stream().anyMatch(s -> s.kind() == kind);
    }
}
