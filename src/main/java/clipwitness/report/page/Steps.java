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

    /** What is wrong with a template that calls itself. */
    static final String NESTED = "it nests too deeply here, as a macro or a file that calls itself does";

    private static final String ENDLESS = "it does not end here, as loops within loops may";

    private long steps;
    private int nested;

    /** A step begins. */
    void enter(String file, int line, int characters, boolean text) {
        nested++;
        if (nested > MOST_NESTED && !text) {
            throw new PebbleException(null, NESTED, line, file);
        }
        if (characters > MOST_CHARACTERS) {
            throw new PebbleException(null, ENDLESS, line, file);
        }
        count(1, file, line);
    }

    /** So many steps are taken at once. */
    void count(long more, String file, int line) {
        steps += more;
        if (steps > MOST_STEPS || Thread.currentThread().isInterrupted()) {
            throw new PebbleException(null, ENDLESS, line, file);
        }
    }

    /** A step ends. */
    void leave() {
        nested--;
    }
}
