package clipwitness.draft.name;

import java.util.Set;

/**
 * A state, as names call it.
 *
 * @param words   the words, lower case, one blank between
 * @param classes what they say; empty where no word is known
 */
public record StateName(String words, Set<StateClass> classes) {
    /** Copies what it is given. */
    public StateName {
        classes = Set.copyOf(classes);
    }
}
