package clipwitness.fault;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Makes one message of problems that have one cause: a mistake that was copied down a column, or into twenty files, is told at its first place,
 * with the other places behind it.
 */
final class OneCause {
    /** From how many on messages that differ only in what they quote are one. */
    private static final int MANY = 5;

    private static final Pattern QUOTED = Pattern.compile("'[^']*'");

    /** Here what is quoted is the cause: each name is answered by itself. */
    private static final Set<ErrorCode> BY_NAME =
            EnumSet.of(ErrorCode.UNKNOWN_NAME, ErrorCode.UNKNOWN_KEY, ErrorCode.OPEN_QUESTION, ErrorCode.MORE_ERRORS);

    private OneCause() {}

    /** The problems in their order, those of one cause in the place of the first. */
    static List<Problem> merged(List<Problem> problems) {
        List<List<Problem>> equal = groups(problems, p -> List.of(p.code(), column(p), p.what(), p.remedy()));
        Map<Object, List<Problem>> alike = new LinkedHashMap<>();
        for (List<Problem> group : equal) {
            alike.computeIfAbsent(shape(group.get(0)), k -> new ArrayList<>()).addAll(group);
        }
        List<Problem> merged = new ArrayList<>();
        for (List<Problem> group : equal) {
            Problem first = group.get(0);
            List<Problem> all = alike.get(shape(first));
            boolean one = all.size() >= MANY && !BY_NAME.contains(first.code());
            if (!one) {
                merged.add(told(group));
            } else if (all.get(0).equals(first)) {
                merged.add(told(all));
            }
        }
        return merged;
    }

    private static List<List<Problem>> groups(List<Problem> problems, Function<Problem, Object> key) {
        Map<Object, List<Problem>> groups = new LinkedHashMap<>();
        problems.forEach(p ->
                groups.computeIfAbsent(key.apply(p), k -> new ArrayList<>()).add(p));
        return List.copyOf(groups.values());
    }

    private static Object shape(Problem p) {
        return List.of(p.code(), column(p), unquoted(p.what()), unquoted(p.remedy()));
    }

    /** Problems of whole files are compared over all files, the others within one. */
    private static List<String> column(Problem p) {
        boolean ofFile = p.where().line() == 0;
        return List.of(ofFile ? "" : p.where().file(), p.where().column());
    }

    private static String unquoted(String text) {
        return QUOTED.matcher(text).replaceAll("''");
    }

    private static Problem told(List<Problem> group) {
        Problem first = group.get(0);
        if (group.size() == 1) {
            return first;
        }
        List<Problem> others = group.subList(1, group.size());
        String places = first.where().line() > 0
                ? Places.ofLines(others.stream().map(p -> p.where().line()).toList())
                : Places.ofFiles(others.stream().map(p -> p.where().file()).toList());
        return places.isEmpty()
                ? first
                : new Problem(first.code(), first.where(), first.what() + " (likewise " + places + ")", first.remedy());
    }
}
