package clipwitness.figure.chart;

import java.util.List;
import java.util.stream.Stream;

/** Lists end to end. */
public final class Lists {
    private Lists() {}

    /** The elements of one list, then those of another. */
    public static <T> List<T> joined(List<? extends T> first, List<? extends T> second) {
        return Stream.<T>concat(first.stream(), second.stream()).toList();
    }
}
