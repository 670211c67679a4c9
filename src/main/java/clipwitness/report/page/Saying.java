package clipwitness.report.page;

import clipwitness.words.WordBundle;
import io.pebbletemplates.pebble.error.PebbleException;
import io.pebbletemplates.pebble.extension.AbstractExtension;
import io.pebbletemplates.pebble.extension.Function;
import io.pebbletemplates.pebble.template.EvaluationContext;
import io.pebbletemplates.pebble.template.PebbleTemplate;
import java.util.List;
import java.util.Map;

/** Lets a template print a sentence of its words: {@code say("page.verdict")}, or with name and text of each hole by turns. */
final class Saying extends AbstractExtension implements Function {
    private final WordBundle words;

    Saying(WordBundle words) {
        this.words = words;
    }

    @Override
    public Map<String, Function> getFunctions() {
        return Map.of("say", this);
    }

    /** None: the arguments have numbers from 0 on. */
    @Override
    public List<String> getArgumentNames() {
        return List.of();
    }

    @Override
    public Object execute(Map<String, Object> args, PebbleTemplate self, EvaluationContext context, int lineNumber) {
        String[] holes = new String[Math.max(0, args.size() - 1)];
        for (int i = 0; i < holes.length; i++) {
            holes[i] = String.valueOf(args.get(Integer.toString(i + 1)));
        }
        String name = String.valueOf(args.get("0"));
        if (!words.has(name)) {
            throw new TemplateFault.UnknownSentence(name, lineNumber, self.getName());
        }
        try {
            return words.say(name, holes);
        } catch (IllegalArgumentException e) {
            throw new PebbleException(e, e.getMessage(), lineNumber, self.getName());
        }
    }
}
