package clipwitness.draft.name;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Which state each file shows, from the words that are left of their paths, all paths together. */
final class States {
    /** So many names that nothing else is known of may be states; more are names of captures. */
    private static final int MOST_UNKNOWN = 6;

    private final List<PathWords> paths;
    private final Set<String> common;

    /**
     * States of some files.
     *
     * @param paths what is left of their paths
     */
    States(List<PathWords> paths) {
        this.paths = paths;
        this.common = common(paths);
    }

    /**
     * What a path says.
     *
     * @param state   the state
     * @param setting words of the file's name beside a state that its folder names
     */
    record Said(Optional<Guess<StateName>> state, Optional<Guess<String>> setting) {}

    private static Set<String> common(List<PathWords> paths) {
        Set<String> common = new HashSet<>();
        if (paths.size() > 1) {
            common.addAll(words(paths.get(0)));
            paths.forEach(p -> common.retainAll(words(p)));
        }
        return common;
    }

    private static Set<String> words(PathWords path) {
        return IntStream.range(0, path.size())
                .mapToObj(i -> StateWords.of(path.part(i)))
                .flatMap(w -> w.words().stream())
                .collect(Collectors.toSet());
    }

    /** What each path says, in their order. */
    List<Said> all() {
        List<Said> all = paths.stream().map(this::said).collect(Collectors.toCollection(ArrayList::new));
        Map<String, Long> unknown = all.stream()
                .flatMap(s -> s.state().stream())
                .filter(s -> s.value().classes().isEmpty())
                .collect(Collectors.groupingBy(s -> s.value().words(), Collectors.counting()));
        long files = unknown.values().stream().mapToLong(n -> n).sum();
        if (unknown.size() > MOST_UNKNOWN && unknown.size() == files) {
            all.replaceAll(
                    s -> s.state().filter(g -> g.value().classes().isEmpty()).isPresent()
                            ? new Said(Optional.empty(), Optional.empty())
                            : s);
        }
        return all;
    }

    private Said said(PathWords path) {
        StateWords file = StateWords.of(path.part(path.size() - 1));
        Optional<StateWords> folder = folder(path, true);
        if (!file.classes().isEmpty()) {
            boolean both = folder.filter(file::needs).isPresent();
            StateWords whole = both ? file.within(folder.get()) : file;
            return new Said(whole.name(common).map(n -> guess(n, both ? "folder and file" : "file")), Optional.empty());
        }
        if (folder.isPresent()) {
            return new Said(
                    folder.get().name(common).map(n -> guess(n, "folder")),
                    file.name(common)
                            .filter(n -> n.words().length() > 1)
                            .map(n -> new Guess<>(
                                    n.words(), quoted(n.words()) + " in the name of the file, beside the state")));
        }
        Optional<Guess<StateName>> unknown = file.name(common)
                .map(n -> guess(n, "file"))
                .or(() -> folder(path, false).flatMap(w -> w.name(common)).map(n -> guess(n, "folder")));
        return new Said(unknown, Optional.empty());
    }

    private static Guess<StateName> guess(StateName name, String where) {
        return new Guess<>(name, quoted(name.words()) + " in the name of the " + where);
    }

    private static String quoted(String words) {
        return "\"" + words + "\"";
    }

    /** The nearest folder with words for a state, or with words at all that not every path has. */
    private Optional<StateWords> folder(PathWords path, boolean known) {
        for (int i = path.size() - 2; i >= 0; i--) {
            StateWords words = StateWords.of(path.part(i));
            if (known ? !words.classes().isEmpty() : words.name(common).isPresent()) {
                return Optional.of(words);
            }
        }
        return Optional.empty();
    }
}
