package clipwitness.report.page;

import io.pebbletemplates.pebble.error.PebbleException;

/** Counts what a template does, so that one that never ends is stopped at its line, on every machine at the same one. */
final class Steps {
    /** A page of a hundred captures takes some hundred thousand. */
    private static final int MOST_STEPS = 20_000_000;

    /** A page of a hundred captures has some million. */
    private static final int MOST_CHARACTERS = 20_000_000;

    /** The built-in templates nest about ten. */
    private static final int MOST_NESTED = 200;

    private int steps;
    private int nested;

    /** A step begins. */
    void enter(String file, int line, int characters) {
        steps++;
        nested++;
        if (Thread.currentThread().isInterrupted()) {
            throw new PebbleException(null, "it was stopped", line, file);
        }
        if (nested > MOST_NESTED) {
            throw new PebbleException(
                    null, "it nests " + MOST_NESTED + " deep here: a macro or file that calls itself?", line, file);
        }
        if (steps > MOST_STEPS || characters > MOST_CHARACTERS) {
            throw new PebbleException(null, "it does not end: a loop within loops?", line, file);
        }
    }

    /** A step ends. */
    void leave() {
        nested--;
    }
}
