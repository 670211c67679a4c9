package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import clipwitness.job.Role;
import clipwitness.job.ShortName;
import clipwitness.job.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads the section {@code states}. */
final class StatesSection {
    /** Keys of a rail, which no state can be called. */
    private static final List<String> TAKEN = List.of("name", "expected", "tolerance");

    private static final List<String> ROLES =
            Stream.of(Role.values()).map(Role::code).toList();

    /** What a state says of itself, before its comparisons are settled. */
    private record Draft(
            SheetNode node,
            String name,
            Optional<Field> written,
            Optional<Field> brief,
            Optional<Role> role,
            Optional<Field> against,
            List<Field> also) {
        String label() {
            return written.map(Field::text).orElse(name);
        }

        /** What sentences call it, as far as the sheet says so. */
        Optional<String> called() {
            return brief.map(Field::text);
        }
    }

    private final String language;
    private final List<Draft> drafts = new ArrayList<>();
    private final List<String> names;
    private final List<String> befores;

    /**
     * Reads the section.
     *
     * @param language language of the report
     */
    StatesSection(Section section, String language) {
        this.language = language;
        section.values().forEach((name, node) -> drafts.add(draft(node, name)));
        names = drafts.stream().map(Draft::name).toList();
        drafts.forEach(this::checkLabel);
        drafts.forEach(this::checkShort);
        befores = drafts.stream()
                .filter(d -> d.role().filter(r -> r == Role.BEFORE).isPresent())
                .map(Draft::name)
                .toList();
        if (befores.isEmpty() && drafts.stream().allMatch(d -> d.role().isPresent())) {
            section.fault(
                    ErrorCode.BAD_ROLES,
                    "",
                    "no state has the role before",
                    "Give it to the state that the others are compared with, for example received: {role: before}");
        }
    }

    /** Readers tell states apart by their labels alone. */
    private void checkLabel(Draft draft) {
        drafts.stream()
                .takeWhile(earlier -> !earlier.name().equals(draft.name()))
                .filter(earlier -> earlier.label().equalsIgnoreCase(draft.label()))
                .findFirst()
                .ifPresent(earlier -> draft.written()
                        .or(earlier::written)
                        .ifPresent(field -> field.fault(
                                ErrorCode.TWICE,
                                "the label " + field.quoted() + " stands for two states, "
                                        + NameWords.quoted(earlier.name()) + " and " + NameWords.quoted(draft.name()),
                                "Give each state a label of its own")));
    }

    /** A short name is short, and no other state's label or short name. */
    private void checkShort(Draft draft) {
        draft.brief().ifPresent(field -> {
            if (ShortName.words(field.text()) > ShortName.MOST_WORDS) {
                field.fault(
                        "the short name " + field.quoted() + " has more than " + ShortName.MOST_WORDS + " words",
                        "Write one to four words, for example short: new position");
            }
            drafts.stream()
                    .filter(other -> !other.name().equals(draft.name()))
                    .filter(other -> Stream.of(other.label(), other.called().orElse(other.label()))
                            .anyMatch(field.text()::equalsIgnoreCase))
                    .findFirst()
                    .ifPresent(other -> field.fault(
                            ErrorCode.TWICE,
                            "the short name " + field.quoted() + " also stands for the state "
                                    + NameWords.quoted(other.name()),
                            "Give each state a short name of its own"));
        });
    }

    /** The short name on the sheet, else one that follows from the label; the name in the captures table where two would be the same. */
    private String called(Draft draft) {
        String own = derived(draft);
        boolean shared = drafts.stream()
                .filter(other -> !other.name().equals(draft.name()))
                .anyMatch(other -> derived(other).equalsIgnoreCase(own));
        return draft.called().orElse(shared ? ShortName.ofName(draft.name()) : own);
    }

    private String derived(Draft draft) {
        return draft.called().orElseGet(() -> ShortName.of(draft.label(), draft.name(), language));
    }

    /** Names of all states, also of those that are faulty otherwise. */
    List<String> names() {
        return names;
    }

    /** The states; those without a role are left out. */
    List<State> states() {
        return drafts.stream().map(this::state).flatMap(Optional::stream).toList();
    }

    private static Draft draft(SheetNode node, String name) {
        NameWords.check(node, name, "state");
        NameWords.refuse(node, name, TAKEN);
        return Section.read(
                node,
                s -> new Draft(
                        node,
                        name,
                        s.field("label"),
                        s.field("short"),
                        s.required("role", "Write one of " + NameWords.either(ROLES))
                                .flatMap(StatesSection::role),
                        s.field("against"),
                        s.node("also-against").map(SheetNode::texts).orElse(List.of())));
    }

    private static Optional<Role> role(Field field) {
        return field.choice(List.of(Role.values()), Role::code, "role");
    }

    private Optional<State> state(Draft draft) {
        if (draft.role().isEmpty()) {
            return Optional.empty();
        }
        Role role = draft.role().get();
        boolean compared = role == Role.UNCHANGED || role == Role.CHANGED;
        Optional<String> against = compared ? against(draft) : nothing(draft, role);
        List<String> also = new ArrayList<>();
        for (Field field : draft.also()) {
            alsoAgainst(field, draft, against, also).ifPresent(also::add);
        }
        return Optional.of(new State(draft.name(), draft.label(), called(draft), role, against, also));
    }

    private Optional<String> against(Draft draft) {
        if (draft.against().isPresent()) {
            return draft.against()
                    .get()
                    .oneOf(names, "state")
                    .filter(name -> isBefore(draft.against().get(), name));
        }
        if (befores.size() > 1) {
            draft.node()
                    .fault(
                            ErrorCode.MISSING_KEY,
                            "the key 'against' is missing, and " + NameWords.all(befores) + " all have the role before",
                            "Say which one this state is compared with: against: " + befores.get(0));
        }
        return befores.stream().findFirst();
    }

    private boolean isBefore(Field field, String name) {
        if (!befores.contains(name)) {
            field.fault(
                    ErrorCode.BAD_ROLES,
                    "the state " + NameWords.quoted(name) + " does not have the role before",
                    "Write " + NameWords.either(befores));
        }
        return befores.contains(name);
    }

    private static Optional<String> nothing(Draft draft, Role role) {
        if (draft.against().isPresent()) {
            draft.against()
                    .get()
                    .fault(
                            ErrorCode.BAD_ROLES,
                            "a state with the role " + role.code() + " is not compared with another",
                            "Leave against out, or give the state the role unchanged or changed");
        }
        if (role == Role.SHOWN && !draft.also().isEmpty()) {
            draft.also()
                    .get(0)
                    .fault(
                            ErrorCode.BAD_ROLES,
                            "a state with the role shown is compared with nothing",
                            "Leave also-against out, or give the state the role unchanged or changed");
        }
        return Optional.empty();
    }

    private Optional<String> alsoAgainst(Field field, Draft draft, Optional<String> against, List<String> before) {
        Optional<String> name = field.oneOf(names, "state");
        if (name.filter(draft.name()::equals).isPresent()) {
            field.fault(ErrorCode.BAD_ROLES, "the state would be compared with itself", "Name another state");
        } else if (name.isPresent() && (name.equals(against) || before.contains(name.get()))) {
            field.fault(ErrorCode.BAD_ROLES, "this comparison is made already", "Remove it here");
        }
        return name;
    }
}
