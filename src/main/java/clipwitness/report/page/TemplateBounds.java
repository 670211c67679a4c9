package clipwitness.report.page;

import io.pebbletemplates.pebble.error.PebbleException;
import io.pebbletemplates.pebble.extension.AbstractExtension;
import io.pebbletemplates.pebble.extension.AbstractNodeVisitor;
import io.pebbletemplates.pebble.extension.Function;
import io.pebbletemplates.pebble.extension.NodeVisitorFactory;
import io.pebbletemplates.pebble.extension.core.RangeFunction;
import io.pebbletemplates.pebble.node.BodyNode;
import io.pebbletemplates.pebble.node.ImportNode;
import io.pebbletemplates.pebble.node.SetNode;
import io.pebbletemplates.pebble.template.EvaluationContext;
import io.pebbletemplates.pebble.template.PebbleTemplate;
import io.pebbletemplates.pebble.template.PebbleTemplateImpl;
import java.util.List;
import java.util.Map;

/** Keeps a template within bounds: each of its pieces is counted and knows its line, lists of numbers are short, and there are no bundles. */
final class TemplateBounds extends AbstractExtension {
    private static final int LONGEST_RANGE = 100_000;

    private final Steps steps = new Steps();

    @Override
    public List<NodeVisitorFactory> getNodeVisitors() {
        return List.of(template -> new Visitor((PebbleTemplateImpl) template));
    }

    @Override
    public Map<String, Function> getFunctions() {
        return Map.of(RangeFunction.FUNCTION_NAME, new ShortRange(), "i18n", new NoBundle());
    }

    private final class Visitor extends AbstractNodeVisitor {
        Visitor(PebbleTemplateImpl template) {
            super(template);
        }

        @Override
        public void visit(BodyNode body) {
            super.visit(body);
            body.getChildren()
                    .replaceAll(piece ->
                            piece instanceof SetNode || piece instanceof ImportNode // these are told by their class
                                    ? piece
                                    : new Located(piece, steps, body.getLineNumber()));
        }
    }

    /** Numbers from one to another, not so many that they fill the memory. */
    private final class ShortRange implements Function {
        private final RangeFunction usual = new RangeFunction();

        @Override
        public List<String> getArgumentNames() {
            return usual.getArgumentNames();
        }

        @Override
        public Object execute(Map<String, Object> args, PebbleTemplate self, EvaluationContext context, int line) {
            if (args.get("start") instanceof Number start && args.get("end") instanceof Number end) {
                double numbers = Math.abs(end.doubleValue() - start.doubleValue());
                if (numbers > LONGEST_RANGE) {
                    throw new PebbleException(
                            null, "a range holds at most " + LONGEST_RANGE + " numbers", line, self.getName());
                }
                steps.count((long) numbers, self.getName(), line);
            }
            return usual.execute(args, self, context, line);
        }
    }

    /** Bundles would be looked for on the class path, which no template reaches. */
    private static final class NoBundle implements Function {
        @Override
        public List<String> getArgumentNames() {
            return List.of("bundle", "key", "params");
        }

        @Override
        public Object execute(Map<String, Object> args, PebbleTemplate self, EvaluationContext context, int line) {
            throw new PebbleException(
                    null,
                    "there is no bundle '" + args.get("bundle")
                            + "': sentences are in words.properties, and say(\"name\")" + " prints one",
                    line,
                    self.getName());
        }
    }
}
