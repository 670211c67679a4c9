package clipwitness.draft;

import clipwitness.draft.name.Guess;
import clipwitness.draft.name.StateClass;
import clipwitness.draft.name.StateName;
import clipwitness.job.Role;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** States and their roles, from the words of names. */
final class DraftStates {
    private static final int LONGEST = 60;
    private static final Set<String> TAKEN = Set.of("name", "expected", "tolerance");

    private final boolean hasBefore;

    private DraftStates(Collection<StateName> names) {
        hasBefore = names.stream().anyMatch(n -> n.classes().contains(StateClass.BEFORE));
    }

    /** The states of these names, in the order before, unchanged, changed, open, shown. */
    static List<DraftState> of(Collection<StateName> names) {
        DraftStates states = new DraftStates(names);
        List<DraftState> found = new ArrayList<>();
        for (StateName name : new LinkedHashSet<>(names)) {
            found.add(states.state(name));
        }
        List<DraftState> befores =
                found.stream().filter(s -> is(s, Role.BEFORE)).toList();
        return found.stream()
                .map(s -> befores.size() > 1 ? against(s, befores.get(0)) : s)
                .sorted(Comparator.comparingInt(DraftStates::place))
                .toList();
    }

    private static boolean is(DraftState state, Role role) {
        return state.role().filter(r -> r.value() == role).isPresent();
    }

    private static int place(DraftState state) {
        return state.role()
                .map(r -> List.of(Role.BEFORE, Role.UNCHANGED, Role.CHANGED).indexOf(r.value()))
                .map(p -> p < 0 ? Role.values().length : p)
                .orElse(Role.values().length - 1);
    }

    private static DraftState against(DraftState state, DraftState before) {
        boolean compared = !is(state, Role.BEFORE) && !is(state, Role.SHOWN);
        return compared
                ? new DraftState(
                        state.name(),
                        state.label(),
                        state.role(),
                        Optional.of(before.name()),
                        state.doubt()
                                .or(() -> Optional.of("is " + before.name()
                                        + " the state before that this one is to be compared with?")))
                : state;
    }

    /** What sheet and table call a state. */
    static String name(StateName state) {
        String joined =
                state.words().replaceAll("[^\\p{L}\\p{M}\\p{N}.+-]+", "-").replaceAll("^[^\\p{L}\\p{N}]+|[ -]+$", "");
        String cut = joined.substring(0, Math.min(joined.length(), LONGEST)).replaceAll("-+$", "");
        return cut.isEmpty() ? "state" : TAKEN.contains(cut) ? cut + "-1" : cut;
    }

    private DraftState state(StateName name) {
        String words = name.words();
        String label = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
        Set<StateClass> c = name.classes();
        if (c.contains(StateClass.BEFORE)) {
            return known(name, label, Role.BEFORE, "it names the state before the work", Optional.empty());
        }
        if (c.contains(StateClass.ORIGINAL)) {
            boolean later = hasBefore || c.contains(StateClass.AFTER);
            return known(
                    name,
                    label,
                    later ? Role.UNCHANGED : Role.BEFORE,
                    later
                            ? "it names the original after the work"
                            : "it names the original, and nothing else is from before",
                    Optional.empty());
        }
        if (c.contains(StateClass.UNCHANGED)) {
            return known(name, label, Role.UNCHANGED, "it must be again what it was", Optional.empty());
        }
        if (c.contains(StateClass.CHANGED)) {
            return known(name, label, Role.CHANGED, "it names something new", Optional.empty());
        }
        if (c.contains(StateClass.POSITION)) {
            return known(
                    name,
                    label,
                    Role.CHANGED,
                    "a position of a switch",
                    Optional.of("is this the original position? Then write role: unchanged"));
        }
        return c.contains(StateClass.FAULT)
                ? known(name, label, Role.SHOWN, "it names a fault, which is compared with nothing", Optional.empty())
                : new DraftState(name(name), label, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static DraftState known(StateName name, String label, Role role, String reason, Optional<String> doubt) {
        return new DraftState(name(name), label, Optional.of(new Guess<>(role, reason)), Optional.empty(), doubt);
    }
}
