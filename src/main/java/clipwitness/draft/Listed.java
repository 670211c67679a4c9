package clipwitness.draft;

import java.util.List;

/** A list in a sentence, not longer than somebody reads. */
final class Listed {
    private static final int MOST = 5;

    private Listed() {}

    static String of(List<String> items) {
        int more = items.size() - MOST;
        return String.join(", ", items.subList(0, Math.min(MOST, items.size())))
                + (more > 0 ? " and " + more + " more" : "");
    }
}
