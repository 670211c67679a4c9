package clipwitness.job;

import clipwitness.capture.InputException;
import clipwitness.capture.Origin;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Says where and why a text is not YAML. */
final class BrokenYaml {
    private BrokenYaml() {}

    static InputException problem(String file, String text, YamlEngineException e) {
        if (e instanceof ReaderException control) {
            return new InputException(
                    Origin.of(file, lineOf(text, control.getPosition())),
                    String.format("the character with code %d is not allowed", control.getCodePoint()),
                    "Delete it; it may not show on the screen");
        }
        if (e instanceof MarkedYamlEngineException marked
                && marked.getProblemMark().isPresent()) {
            int line = marked.getProblemMark().orElseThrow().getLine() + 1;
            return atLine(file, line, marked.getProblem());
        }
        return new InputException(Origin.of(file), "this is not YAML 1.2", "Remove the lines that begin with %");
    }

    private static InputException atLine(String file, int line, String problem) {
        if (problem.contains("\\t(TAB)")) {
            return new InputException(
                    Origin.of(file, line), "the line is indented with a tab", "Indent with spaces only");
        }
        return new InputException(
                Origin.of(file, line),
                "this is not YAML: " + problem,
                "Check indentation, colons, quotes and brackets here and in the line before; a text with ': ', ' #' or a "
                        + "first letter such as @ or % needs quotes");
    }

    private static int lineOf(String text, int position) {
        String before = text.substring(0, Math.min(position, text.length()));
        return 1 + (int) before.chars().filter(c -> c == '\n').count();
    }
}
