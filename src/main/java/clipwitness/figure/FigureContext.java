package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.compare.JobResults;

/**
 * What the figures of one job have in common.
 *
 * @param results results
 * @param palette how the states look
 * @param main    the job's main condition, gain left open
 */
record FigureContext(JobResults results, StatePalette palette, Condition main) {
    /** The comparisons in words. */
    Changes changes() {
        return new Changes(results, palette);
    }

    /** How the title of a figure under another condition than the main one ends. */
    String titleEnd(Condition condition) {
        String words = ConditionWords.difference(condition, main);
        return words.isEmpty() ? "" : ", " + words;
    }
}
