package clipwitness.compare.hint;

import clipwitness.compare.result.Hint;
import clipwitness.job.State;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What figures can look like: the code of the hint and its sentence, for one state and for several that share the cause. */
enum Look {
    /** The upper half goes on where the lower clips. */
    UPPER_OPEN("one-side-not-clipping", openLeg("upper"), openLeg("upper")),
    /** The lower half goes on where the upper clips. */
    LOWER_OPEN("one-side-not-clipping", openLeg("lower"), openLeg("lower")),
    /** Nothing clips where something did. */
    NOT_CLIPPING(
            "not-clipping",
            "%s does not clip where the unit did before: look for clippers that are not connected, a switch that leaves them"
                    + " out, or devices that do not conduct.",
            "%s do not clip where the unit did before: look for clippers that are not connected, a switch that leaves them"
                    + " out, or devices that do not conduct."),
    /** Nothing clips at some settings where something did, and at others it does. */
    HARDLY_CLIPPING(
            "not-clipping",
            "%s hardly clips at settings where the unit did before: look for clippers that are not connected, a switch that"
                    + " leaves them out, or a leg that is open behind a coupling capacitor.",
            "%s hardly clip at settings where the unit did before: look for clippers that are not connected, a switch that"
                    + " leaves them out, or a leg that is open behind a coupling capacitor."),
    /** High notes are missing at all settings alike. */
    DULLER(
            "beside-the-clipper",
            "%s is duller at all settings alike, also where nothing clips: look at filters behind or before the clipper.",
            "%s are duller at all settings alike, also where nothing clips: look at filters behind or before the clipper."),
    /** Low notes are missing at all settings alike. */
    THINNER(
            "beside-the-clipper",
            "%s is thinner at all settings alike, also where nothing clips: look at coupling capacitors and filters behind or"
                    + " before the clipper.",
            "%s are thinner at all settings alike, also where nothing clips: look at coupling capacitors and filters behind or"
                    + " before the clipper."),
    /** The level has moved at all settings alike. */
    OTHER_LEVEL(
            "beside-the-clipper",
            "%s has another level at all settings alike, also where nothing clips: look at the volume control and at what"
                    + " sets the level behind or before the clipper.",
            "%s have another level at all settings alike, also where nothing clips: look at the volume control and at what"
                    + " sets the level behind or before the clipper.");

    private final String code;
    private final String one;
    private final String several;

    Look(String code, String one, String several) {
        this.code = code;
        this.one = one;
        this.several = several;
    }

    private static String openLeg(String half) {
        return "In %s the " + half + " half of the wave does not clip where the other does: look for an open leg, a lifted joint"
                + " or a device that does not conduct.";
    }

    /** A half that does not clip. */
    static Look open(Half half) {
        return half == Half.UPPER ? UPPER_OPEN : LOWER_OPEN;
    }

    /**
     * One state that looks so.
     *
     * @param look     what it looks like
     * @param state    which state
     * @param evidence the figures
     */
    record Seen(Look look, State state, String evidence) {}

    /** One hint for each look, however many states share it. */
    static List<Hint> hints(List<Seen> seen) {
        Map<Look, List<Seen>> alike = new LinkedHashMap<>();
        seen.forEach(s -> alike.computeIfAbsent(s.look, l -> new ArrayList<>()).add(s));
        return alike.entrySet().stream()
                .map(e -> e.getKey().hint(e.getValue()))
                .toList();
    }

    private Hint hint(List<Seen> seen) {
        String labels = seen.stream().map(s -> quoted(s.state)).collect(Collectors.joining(" and "));
        String evidence = seen.size() == 1
                ? seen.get(0).evidence
                : seen.stream()
                        .map(s -> quoted(s.state) + ": " + s.evidence)
                        .collect(Collectors.joining("; "));
        List<String> states = seen.stream().map(s -> s.state.name()).toList();
        return new Hint(code, states, (seen.size() == 1 ? one : several).formatted(labels), evidence);
    }

    private static String quoted(State state) {
        return "“" + state.label() + "”";
    }
}
