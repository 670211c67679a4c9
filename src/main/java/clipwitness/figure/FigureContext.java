package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.compare.result.JobResults;
import clipwitness.figure.chart.Axes;
import clipwitness.job.JobSheet;
import clipwitness.quantity.NumberText;
import clipwitness.words.Speech;
import clipwitness.words.WordBundle;

/**
 * What the figures of one job have in common.
 *
 * @param results results
 * @param palette how the states look
 * @param main    the job's main condition, gain left open
 * @param numbers numbers as the report's language writes them
 */
record FigureContext(JobResults results, StatePalette palette, Condition main, NumberText numbers) {
    /** The context of a job. */
    static FigureContext of(JobResults results, Condition main) {
        JobSheet sheet = results.job().sheet();
        NumberText numbers = NumberText.in(sheet.report().language());
        return new FigureContext(results, StatePalette.of(sheet.states()), main, numbers);
    }

    /** The comparisons in words. */
    PictureWords comparisons() {
        return new PictureWords(this);
    }

    /** Puts reasons into words. */
    Speech speech() {
        return new Speech(WordBundle.builtIn(), numbers);
    }

    /** Makes the axes. */
    Axes axes() {
        return new Axes(numbers);
    }

    /** Conditions in words. */
    ConditionWords conditions() {
        return new ConditionWords(numbers);
    }

    /** Measured values in words. */
    ValueWords values() {
        return new ValueWords(numbers);
    }

    /** A state's label in a sentence. */
    String quoted(String state) {
        return Sentences.quoted(palette.of(state).label());
    }

    /** How the title of a figure under another condition than the main one ends. */
    String titleEnd(Condition condition) {
        String words = conditions().difference(condition, main);
        return words.isEmpty() ? "" : ", " + words;
    }
}
