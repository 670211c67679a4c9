package clipwitness.report.data;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Where results that a report carries differ from results that were computed again; each difference names its figure. */
public final class ResultsDifference {
    /** Another processor may round the last digits of a figure differently; nothing that a report prints has so many. */
    private static final double ROUNDING = 1e-9;

    private static final String UNCERTAINTY = "expandedUncertainty";
    private static final List<String> LABELS = List.of(
            "file", "from", "to", "state", "device", "devices", "quantity", "name", "code", "order", "gainPercent");
    private static final List<String> DECIDED = List.of("decision", "verdict", "intent");

    private final boolean sameProgram;
    private final List<String> differences = new ArrayList<>();

    private ResultsDifference(boolean sameProgram) {
        this.sameProgram = sameProgram;
    }

    /** Each difference between results of the same version of the program: in any figure, word or list. */
    public static List<String> exact(ResultsDocument said, ResultsDocument now) {
        return between(said, now, true);
    }

    /** Differences between results of two versions: figures that lie apart by more than the larger of their uncertainties, and other decisions. */
    public static List<String> beyondUncertainty(ResultsDocument said, ResultsDocument now) {
        return between(said, now, false);
    }

    private static List<String> between(ResultsDocument said, ResultsDocument now, boolean sameProgram) {
        ResultsDifference difference = new ResultsDifference(sameProgram);
        difference.maps("", said.document(), now.document());
        return difference.differences;
    }

    private void any(String place, Object said, Object now, double tolerance) {
        if (said instanceof Map<?, ?> one && now instanceof Map<?, ?> other) {
            maps(place, one, other);
        } else if (said instanceof List<?> one && now instanceof List<?> other) {
            lists(place, one, other);
        } else if (said instanceof Double one && now instanceof Double other) {
            if (!(Math.abs(one - other) <= tolerance + ROUNDING * Math.abs(other))) {
                tell(place, said, now);
            }
        } else if (!Objects.equals(said, now)) {
            tell(place, said, now);
        }
    }

    private void maps(String place, Map<?, ?> said, Map<?, ?> now) {
        double tolerance = sameProgram ? 0 : Math.max(uncertainty(said), uncertainty(now));
        Set<Object> keys = new LinkedHashSet<>(now.keySet());
        if (sameProgram) {
            keys.addAll(said.keySet());
        }
        for (Object key : keys) {
            Object one = said.get(key);
            Object other = now.get(key);
            if (sameProgram || isCompared(String.valueOf(key), one, other, tolerance)) {
                any(place.isEmpty() ? String.valueOf(key) : place + ", " + key, one, other, tolerance);
            }
        }
    }

    /** Of two versions only what both state is compared: figures with an uncertainty, decisions, and what is nested. */
    private static boolean isCompared(String key, Object said, Object now, double tolerance) {
        boolean nested = (said instanceof Map && now instanceof Map) || (said instanceof List && now instanceof List);
        boolean figure = said instanceof Double && now instanceof Double && tolerance > 0 && !key.equals(UNCERTAINTY);
        boolean decided = DECIDED.contains(key) && said instanceof String;
        return nested || figure || decided;
    }

    private static double uncertainty(Map<?, ?> object) {
        return object.get(UNCERTAINTY) instanceof Double u && u > 0 ? u : 0;
    }

    private void lists(String place, List<?> said, List<?> now) {
        if (said.size() != now.size()) {
            if (sameProgram) {
                differences.add(
                        place + ": " + said.size() + " entries in the report, " + now.size() + " from the data");
            }
            return;
        }
        for (int i = 0; i < now.size(); i++) {
            any(place + ", " + label(now.get(i), i), said.get(i), now.get(i), 0);
        }
    }

    /** What an element is about, as far as it says so. */
    private static String label(Object element, int index) {
        String words = element instanceof Map<?, ?> map
                ? LABELS.stream()
                        .flatMap(l -> Stream.ofNullable(map.get(l)).map(v -> word(l, v)))
                        .collect(Collectors.joining(" "))
                : "";
        return words.isEmpty() ? "entry " + (index + 1) : words;
    }

    private static String word(String label, Object value) {
        return switch (label) {
            case "gainPercent" -> "at gain " + value + " %";
            case "order" -> "order " + value;
            default -> String.valueOf(value);
        };
    }

    private void tell(String place, Object said, Object now) {
        differences.add(place + ": " + shown(said) + " in the report, " + shown(now) + " from the data");
    }

    private static String shown(Object value) {
        if (value instanceof Map || value instanceof List) {
            return "a part";
        }
        return value == null ? "nothing" : String.valueOf(value);
    }
}
