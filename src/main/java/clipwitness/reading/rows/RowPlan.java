package clipwitness.reading.rows;

import clipwitness.quantity.Unit;
import clipwitness.reading.file.Line;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.DataBlock;
import clipwitness.reading.layout.Dialect;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which cells of a row are kept.
 *
 * @param dialect delimiter and decimal mark
 * @param places  places of the cells that are kept, from 0, rising
 * @param names   a name for each of them, for messages
 * @param time    which of them, from 0, holds time stamps; -1 for none
 * @param cells   number of cells that a row may have; further ones must be empty
 * @param within  for each of them the unit that its cells are written with, or empty
 * @param assumed whether no heading says that the time is one
 * @param repeats lines that may stand again among the rows: headers above each sweep of a curve
 * @param axes    which of the kept cells, from 0, place a row and are no value: its time, its number
 */
public record RowPlan(
        Dialect dialect,
        List<Integer> places,
        List<String> names,
        int time,
        int cells,
        List<Optional<Unit>> within,
        boolean assumed,
        List<String> repeats,
        Set<Integer> axes) {
    public RowPlan {
        places = List.copyOf(places);
        names = List.copyOf(names);
        within = List.copyOf(within);
        repeats = List.copyOf(repeats);
        axes = Set.copyOf(axes);
    }

    /** A plan in which no cell but the time places a row. */
    RowPlan(
            Dialect dialect,
            List<Integer> places,
            List<String> names,
            int time,
            int cells,
            List<Optional<Unit>> within,
            boolean assumed,
            List<String> repeats) {
        this(dialect, places, names, time, cells, within, assumed, repeats, time < 0 ? Set.of() : Set.of(time));
    }

    /** A plan for these columns of a file. */
    public static RowPlan of(DataBlock block, List<Column> kept, boolean curve) {
        int time = -1;
        boolean assumed = false;
        Set<Integer> axes = new HashSet<>();
        for (int i = 0; i < kept.size(); i++) {
            time = kept.get(i).use() == Column.Use.TIME ? i : time;
            assumed |= time == i && !kept.get(i).saysTime();
            if (kept.get(i).use() != Column.Use.VALUE) {
                axes.add(i);
            }
        }
        return new RowPlan(
                block.dialect(),
                kept.stream().map(Column::place).toList(),
                kept.stream().map(Column::called).toList(),
                time,
                block.widest(),
                kept.stream().map(c -> block.unitWithin(c.place())).toList(),
                assumed,
                curve ? block.before().stream().map(Line::text).toList() : List.of(),
                axes);
    }

    /** Whether some cells are written with their unit. */
    boolean annotated() {
        return within.stream().anyMatch(Optional::isPresent);
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
