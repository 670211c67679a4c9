package clipwitness.report.page;

import io.pebbletemplates.pebble.error.PebbleException;
import io.pebbletemplates.pebble.extension.NodeVisitor;
import io.pebbletemplates.pebble.node.AbstractRenderableNode;
import io.pebbletemplates.pebble.node.RenderableNode;
import io.pebbletemplates.pebble.node.TextNode;
import io.pebbletemplates.pebble.template.EvaluationContextImpl;
import io.pebbletemplates.pebble.template.PebbleTemplateImpl;
import java.io.IOException;
import java.io.Writer;
import java.nio.CharBuffer;
import java.util.regex.PatternSyntaxException;

/** A piece of a template that says where it stands: in the filled page, and in every fault that it meets. */
final class Located implements RenderableNode {
    private final RenderableNode piece;
    private final Steps steps;
    private final int line;

    /**
     * A piece with its place.
     *
     * @param line line of the template where the piece does not know it
     */
    Located(RenderableNode piece, Steps steps, int line) {
        this.piece = piece;
        this.steps = steps;
        this.line = piece instanceof AbstractRenderableNode node && node.getLineNumber() > 0 ? firstLine(node) : line;
    }

    /** A text knows the line that it ends on. */
    private static int firstLine(AbstractRenderableNode node) {
        return node instanceof TextNode text
                ? node.getLineNumber()
                        - (int) CharBuffer.wrap(text.getData())
                                .chars()
                                .filter(c -> c == '\n')
                                .count()
                : node.getLineNumber();
    }

    @Override
    public void accept(NodeVisitor visitor) {
        piece.accept(visitor);
    }

    @Override
    public void render(PebbleTemplateImpl self, Writer writer, EvaluationContextImpl context) throws IOException {
        int length = 0;
        if (writer instanceof PageText page) { // what a macro writes belongs to the place that calls it
            page.mark(self.getName(), line);
            length = page.length();
        }
        try {
            steps.enter(self.getName(), line, length, piece instanceof TextNode);
            piece.render(self, writer, context);
        } catch (PebbleException e) {
            throw e.getLineNumber() == null ? at(self, e, e.getPebbleMessage()) : e;
        } catch (RuntimeException e) {
            boolean deep = e
                    instanceof
                    PatternSyntaxException; // the engine's own patterns have no fault: their reader has no stack left
            throw at(self, e, deep ? Steps.NESTED : String.valueOf(e.getMessage()));
        } finally {
            steps.leave();
        }
    }

    private PebbleException at(PebbleTemplateImpl self, RuntimeException cause, String message) {
        return new PebbleException(cause, message, line, self.getName());
    }
}
