package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Says where and why a text is not YAML, in words for people who do not know the parser's. */
final class BrokenYaml {
    /**
     * What a complaint of the parser means.
     *
     * @param begins  how the complaint begins
     * @param atStart whether the fault lies where the parser began the construct, not where it gave up
     * @param what    what is wrong
     * @param remedy  what to do
     */
    private record Clue(String begins, boolean atStart, String what, String remedy) {}

    private static final List<Clue> CLUES = List.of(
            new Clue("found character '\\t", false, "the line is indented with a tab", "Indent with spaces only"),
            new Clue(
                    "found character ",
                    false,
                    "a value begins with a character that has a meaning of its own",
                    "Put the value in quotes"),
            new Clue("found unexpected end of stream", true, "a quote is opened here and not closed", "Close it"),
            new Clue(
                    "expected ',' or",
                    true,
                    "a bracket is opened here and not closed, or a comma is missing in it",
                    "Put commas between the entries and close the bracket"),
            new Clue(
                    "mapping values are not allowed here",
                    false,
                    "there is a colon where no key can be",
                    "Indent the keys of one section alike, and put a text with a colon in quotes"),
            new Clue(
                    "could not find expected ':'",
                    true,
                    "a key is without its colon",
                    "Write key, colon, space and value"),
            new Clue(
                    "expected <block end>",
                    false,
                    "the line does not fit what is above it",
                    "Indent the keys of one section alike, and put a text with a quote or # in quotes"),
            new Clue(
                    "",
                    false,
                    "this is not YAML",
                    "Check indentation, colons, quotes and brackets here and just above"));

    private BrokenYaml() {}

    static InputException problem(String file, String text, YamlEngineException e) {
        if (e instanceof ReaderException control) {
            return new InputException(
                    ErrorCode.BAD_CHARACTER,
                    Origin.of(file, lineOf(text, control.getPosition())),
                    "a character is not allowed, the one with the code " + control.getCodePoint(),
                    "Delete it; it may not show on the screen");
        }
        if (e instanceof MarkedYamlEngineException marked
                && marked.getProblemMark().isPresent()) {
            return problem(file, marked);
        }
        return new InputException(
                ErrorCode.BAD_YAML, Origin.of(file), "this is not YAML 1.2", "Remove the line that begins with %YAML");
    }

    private static InputException problem(String file, MarkedYamlEngineException e) {
        Clue clue = CLUES.stream()
                .filter(c -> e.getProblem().startsWith(c.begins()))
                .findFirst()
                .orElseThrow();
        Optional<Mark> start = clue.atStart() ? e.getContextMark() : Optional.empty();
        int line = start.or(e::getProblemMark).orElseThrow().getLine() + 1;
        return new InputException(ErrorCode.BAD_YAML, Origin.of(file, line), clue.what(), clue.remedy());
    }

    private static int lineOf(String text, int position) {
        String before = text.substring(0, Math.min(position, text.length()));
        return 1 + (int) before.chars().filter(c -> c == '\n').count();
    }
}
