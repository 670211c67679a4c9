package clipwitness.reading;

import java.util.List;

/**
 * Which cells of a row are kept.
 *
 * @param dialect delimiter and decimal mark
 * @param places  places of the cells that are kept, from 0, rising
 * @param names   a name for each of them, for messages
 * @param time    which of them, from 0, holds time stamps; -1 for none
 * @param cells   number of cells that a row may have; further ones must be empty
 */
record RowPlan(Dialect dialect, List<Integer> places, List<String> names, int time, int cells) {
    RowPlan {
        places = List.copyOf(places);
        names = List.copyOf(names);
    }

    /** For each cell of a row the number of the kept column, or -1. */
    int[] keptBy() {
        int[] kept = new int[places.get(places.size() - 1) + 1];
        java.util.Arrays.fill(kept, -1);
        for (int i = 0; i < places.size(); i++) {
            kept[places.get(i)] = i;
        }
        return kept;
    }
}
