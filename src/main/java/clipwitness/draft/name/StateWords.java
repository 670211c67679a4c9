package clipwitness.draft.name;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a part of a path says of a state.
 *
 * @param classes what its words say; empty where none is known
 * @param words   its words, those that say nothing left out
 * @param known   those of them that are words for states
 */
record StateWords(Set<StateClass> classes, List<String> words, Set<String> known) {
    /** Longer statements first: mod off is not mod. */
    private static final List<StateClass> ORDER = List.of(
            StateClass.UNCHANGED,
            StateClass.BEFORE,
            StateClass.FAULT,
            StateClass.CHANGED,
            StateClass.ORIGINAL,
            StateClass.AFTER,
            StateClass.POSITION);

    private static final Pattern NUMBER = Pattern.compile("\\d+");
    private static final Pattern COUNTED = Pattern.compile("\\p{L}{0,4}\\d{2,}|\\p{L}?\\d+");
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+(?:[.,]\\d+)?");
    private static final Pattern VARIANT = Pattern.compile("\\d");

    /** Reads a part. */
    static StateWords of(String part) {
        Set<StateClass> classes = EnumSet.noneOf(StateClass.class);
        Set<String> known = new java.util.LinkedHashSet<>();
        String left = part;
        for (StateClass state : ORDER) {
            Matcher matcher = WordList.of(state).matcher(left);
            while (matcher.find()) {
                classes.add(state);
                WORD.matcher(matcher.group()).results().forEach(w -> known.add(w.group()));
            }
            left = WordList.of(state).matcher(left).replaceAll(" | ");
        }
        return new StateWords(classes, telling(part, classes, known), known);
    }

    private static List<String> telling(String part, Set<StateClass> classes, Set<String> known) {
        String plain = classes.isEmpty() ? WordList.generic().matcher(part).replaceAll(" ") : part;
        List<String> words = WORD.matcher(plain).results().map(m -> m.group()).toList();
        List<String> telling = new ArrayList<>();
        boolean variants = classes.contains(StateClass.CHANGED) || classes.contains(StateClass.POSITION);
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i);
            boolean variant = variants
                    && i > 0
                    && known.contains(words.get(i - 1))
                    && VARIANT.matcher(word).matches();
            boolean says = !COUNTED.matcher(word).matches()
                    && !NUMBER.matcher(word).matches()
                    && !WordList.generic().matcher(word).matches();
            if (known.contains(word) || variant || says) {
                telling.add(word);
            }
        }
        return telling;
    }

    /** This part within that one: the file's words after the folder's. */
    StateWords within(StateWords folder) {
        Set<StateClass> both = EnumSet.copyOf(classes);
        both.addAll(folder.classes);
        Set<String> all = new java.util.LinkedHashSet<>(folder.known);
        all.addAll(known);
        return new StateWords(
                both,
                Stream.concat(folder.words.stream(), words.stream()).distinct().toList(),
                all);
    }

    /** Whether the words of a file need those of its folder: original, in a folder called after. */
    boolean needs(StateWords folder) {
        boolean placed = classes.contains(StateClass.BEFORE)
                || classes.contains(StateClass.AFTER)
                || classes.contains(StateClass.FAULT);
        return !placed && (folder.classes.contains(StateClass.AFTER) || folder.classes.contains(StateClass.BEFORE));
    }

    /** The state without words that all files share and that are no words for states; empty where nothing is left. */
    Optional<StateName> name(Set<String> common) {
        List<String> own = words.stream()
                .filter(w -> known.contains(w) || !common.contains(w))
                .toList();
        return own.isEmpty() ? Optional.empty() : Optional.of(new StateName(String.join(" ", own), classes));
    }
}
