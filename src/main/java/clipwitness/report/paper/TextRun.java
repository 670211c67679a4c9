package clipwitness.report.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of text that one face can print.
 *
 * @param text printable text
 * @param face face
 */
record TextRun(String text, Face face) {
    /** Divides a text between a face and the fallback. */
    static List<TextRun> of(String text, Face wanted, Glyphs glyphs) {
        List<TextRun> runs = new ArrayList<>();
        StringBuilder run = new StringBuilder();
        Face current = wanted;
        for (int codePoint : glyphs.printable(text).codePoints().toArray()) {
            Face face = glyphs.inUsual(codePoint) ? wanted : Face.FALLBACK;
            if (face != current && run.length() > 0) {
                runs.add(new TextRun(run.toString(), current));
                run.setLength(0);
            }
            current = face;
            run.appendCodePoint(codePoint);
        }
        if (run.length() > 0) {
            runs.add(new TextRun(run.toString(), current));
        }
        return runs;
    }
}
