package clipwitness.draft.name;

import java.util.Optional;

/** Words for kinds of captures in names. */
final class KindWords {
    private KindWords() {}

    /** The kind that a record's name says, its words taken out. */
    static Optional<Guess<KindWord>> take(PathWords words) {
        for (KindWord kind : new KindWord[] {KindWord.RESPONSE, KindWord.NOISE, KindWord.LISTENING}) {
            Optional<PathWords.Found> found = words.take(WordList.of(kind));
            if (found.isPresent()) {
                words.takeAll(WordList.of(kind));
                return found.map(f -> new Guess<>(kind, f.reason()));
            }
        }
        return Optional.empty();
    }
}
