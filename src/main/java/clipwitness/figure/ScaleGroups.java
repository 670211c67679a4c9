package clipwitness.figure;

import clipwitness.compare.rule.OwnScale;
import clipwitness.figure.chart.LegendEntry;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * States that share a scale, those with the largest waves first: one group, or two where some dwarf the others.
 *
 * @param groups names of states, in the sheet's order
 */
record ScaleGroups(List<List<String>> groups) {
    /** Copies what it is given. */
    ScaleGroups {
        groups = groups.stream().map(List::copyOf).toList();
    }

    /** The groups of some states by the size of their waves. */
    static ScaleGroups of(Map<String, Double> sizes, StatePalette palette) {
        Set<String> large = OwnScale.of(sizes);
        Set<String> small = new LinkedHashSet<>(sizes.keySet());
        small.removeAll(large);
        List<List<String>> groups = new ArrayList<>();
        if (!large.isEmpty()) {
            groups.add(palette.inOrder(large));
        }
        groups.add(palette.inOrder(small));
        return new ScaleGroups(groups);
    }

    private boolean isSplit() {
        return groups.size() > 1;
    }

    /** What a legend says of the states that have a scale of their own. */
    List<LegendEntry> legend(FigureContext context) {
        return isSplit()
                ? List.of(LegendEntry.words(context.say("legend.own-scale", "list", names(context))))
                : List.of();
    }

    /** What a sentence says of them, with a space before it. */
    String finding(FigureContext context) {
        return isSplit() ? " " + context.say("figure.own-scale", "list", names(context)) : "";
    }

    private String names(FigureContext context) {
        return String.join(", ", groups.get(0).stream().map(context::called).toList());
    }
}
