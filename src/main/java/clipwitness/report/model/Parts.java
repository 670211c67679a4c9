package clipwitness.report.model;

import java.util.ArrayList;
import java.util.List;

/** Divides what is too long for one table. */
public final class Parts {
    private Parts() {}

    /** Parts of at most so many elements each, as equal as they can be. */
    public static <T> List<List<T>> of(List<T> all, int most) {
        int count = (all.size() + most - 1) / most;
        List<List<T>> parts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            parts.add(all.subList(i * all.size() / count, (i + 1) * all.size() / count));
        }
        return parts;
    }

    /** Two by two, the last alone where their number is odd. */
    static <T> List<List<T>> pairs(List<T> all) {
        List<List<T>> pairs = new ArrayList<>();
        for (int i = 0; i < all.size(); i += 2) {
            pairs.add(List.copyOf(all.subList(i, Math.min(i + 2, all.size()))));
        }
        return pairs;
    }

    /** Two columns that end evenly, the first the longer by one at most. */
    static <T> List<List<T>> halves(List<T> all) {
        int half = (all.size() + 1) / 2;
        return List.of(List.copyOf(all.subList(0, half)), List.copyOf(all.subList(half, all.size())));
    }
}
