package clipwitness.figure.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * What a text covers along an axis.
 *
 * @param from one end, points
 * @param to   other end, not below the first
 */
record Span(double from, double to) {
    boolean overlaps(Span other) {
        return from < other.to && other.from < to;
    }

    /** Indices of every n-th of some spans, the first included, n as small as keeps them apart. */
    static List<Integer> apart(List<Span> spans) {
        for (int stride = 1; stride < spans.size(); stride++) {
            List<Integer> chosen = every(stride, spans.size());
            if (areApart(spans, chosen)) {
                return chosen;
            }
        }
        return spans.isEmpty() ? List.of() : List.of(0);
    }

    /** Indices of the spans, in their order, that touch none of those chosen before them. */
    static List<Integer> free(List<Span> spans) {
        List<Integer> chosen = new ArrayList<>();
        for (int i = 0; i < spans.size(); i++) {
            Span span = spans.get(i);
            if (chosen.stream().noneMatch(c -> spans.get(c).overlaps(span))) {
                chosen.add(i);
            }
        }
        return chosen;
    }

    private static List<Integer> every(int stride, int count) {
        List<Integer> indices = new ArrayList<>();
        for (int i = 0; i < count; i += stride) {
            indices.add(i);
        }
        return indices;
    }

    private static boolean areApart(List<Span> spans, List<Integer> chosen) {
        for (int i = 1; i < chosen.size(); i++) {
            if (spans.get(chosen.get(i)).overlaps(spans.get(chosen.get(i - 1)))) {
                return false;
            }
        }
        return true;
    }
}
