package clipwitness.draft;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** Values of one quantity that are the same within a ratio. */
final class Clusters {
    private Clusters() {}

    /**
     * The middle value of the largest group of like values; empty where there are none.
     *
     * @param values above 0
     * @param ratio  by which like values may differ, a little above 1
     */
    static OptionalDouble largest(List<Double> values, double ratio) {
        return groups(values, ratio).stream()
                .max(Comparator.comparingInt(List::size))
                .map(g -> OptionalDouble.of(g.get(g.size() / 2)))
                .orElse(OptionalDouble.empty());
    }

    /** The groups, each from its smallest value up. */
    static List<List<Double>> groups(List<Double> values, double ratio) {
        List<List<Double>> groups = new ArrayList<>();
        List<Double> group = new ArrayList<>();
        for (double v : values.stream().sorted().toList()) {
            if (!group.isEmpty() && !(v < group.get(0) * ratio)) {
                groups.add(group);
                group = new ArrayList<>();
            }
            group.add(v);
        }
        if (!group.isEmpty()) {
            groups.add(group);
        }
        return groups;
    }
}
