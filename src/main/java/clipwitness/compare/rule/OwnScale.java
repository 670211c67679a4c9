package clipwitness.compare.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Which states dwarf the others, so that a picture needs a scale of its own for them. */
public final class OwnScale {
    /** So many times as large as the next: on one scale the smaller waves would be a fifth of the picture high, or less. */
    private static final double APART = 5;

    private OwnScale() {}

    /**
     * The few that dwarf the many; none where no state stands out so, or where those that do are not the fewer.
     *
     * @param sizes largest values of the states, all in one unit
     */
    public static Set<String> of(Map<String, Double> sizes) {
        List<String> falling = new ArrayList<>(sizes.keySet());
        falling.sort(Comparator.comparing((String s) -> sizes.get(s)).reversed());
        double widest = APART;
        int count = 0;
        for (int i = 1; 2 * i < falling.size(); i++) {
            double ratio = sizes.get(falling.get(i - 1)) / sizes.get(falling.get(i));
            if (ratio >= widest) {
                widest = ratio;
                count = i;
            }
        }
        return new TreeSet<>(falling.subList(0, count));
    }
}
