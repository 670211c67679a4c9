package clipwitness.fault;

import java.util.ArrayList;
import java.util.List;

/** Places of a problem in words. */
public final class Places {
    private static final int MOST = 8;

    private Places() {}

    /** Lines in order: {@code on line 4}, {@code on lines 3 to 21, 25 and 30}; empty for none. */
    static String ofLines(List<Integer> lines) {
        List<Integer> sorted = lines.stream().sorted().distinct().toList();
        List<String> ranges = new ArrayList<>();
        for (int from = 0; from < sorted.size(); ) {
            int end = from;
            while (end + 1 < sorted.size() && sorted.get(end + 1) == sorted.get(end) + 1) {
                end++;
            }
            boolean range = end > from + 1;
            ranges.add(range ? sorted.get(from) + " to " + sorted.get(end) : String.valueOf(sorted.get(from)));
            from = range ? end + 1 : from + 1;
        }
        return ranges.isEmpty() ? "" : (sorted.size() == 1 ? "on line " : "on lines ") + listed(ranges);
    }

    /** Files: {@code in b.csv}, {@code in b.csv, c.csv and 12 others}; empty for none. */
    static String ofFiles(List<String> files) {
        List<String> distinct = files.stream().distinct().toList();
        return distinct.isEmpty() ? "" : "in " + listed(distinct);
    }

    /** Names, one or more: {@code a}, {@code a, b and c}; of more than nine the first eight and how many others. */
    public static String listed(List<String> all) {
        boolean more = all.size() > MOST + 1;
        List<String> first = all.subList(0, more ? MOST : all.size() - 1);
        String last = more ? all.size() - MOST + " others" : all.get(all.size() - 1);
        return first.isEmpty() ? last : String.join(", ", first) + " and " + last;
    }
}
