package clipwitness.draft;

import clipwitness.draft.name.Guess;
import clipwitness.draft.name.KindWord;
import clipwitness.draft.name.NameFacts;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The kind of each capture: from its content, and where that leaves a choice, from its name. */
final class Kinds {
    private static final double SAME = 0.015;
    private static final double NEAR_MAINS = 5e-3;
    private static final List<Integer> MAINS = List.of(50, 60, 100, 120, 150, 180);
    private static final String SOUND = ".wav";

    private final OptionalDouble stimulus;

    /**
     * Kinds under a stimulus.
     *
     * @param stimulus frequency of most waves, Hz
     */
    Kinds(OptionalDouble stimulus) {
        this.stimulus = stimulus;
    }

    /**
     * The kind of one capture.
     *
     * @param alone whether nothing says that a tone was fed into the unit: no input channel in another file, and no frequency in the name
     */
    Guess<DraftKind> of(DraftedExport source, NameFacts facts, boolean alone) {
        Content content = source.content();
        Optional<Guess<KindWord>> word = facts.kind();
        return switch (content.type()) {
            case CURVE -> new Guess<>(DraftKind.JUNCTION, content.reason());
            case TONE -> tone(source, word, alone);
            case DRIVEN ->
                is(word, KindWord.LISTENING)
                        ? said(DraftKind.LISTENING, word)
                        : new Guess<>(DraftKind.RESPONSE, content.reason());
            case PLAYED -> played(source, word);
            case QUIET ->
                word.isPresent() && kind(word.get().value()).isPresent()
                        ? said(kind(word.get().value()).get(), word)
                        : new Guess<>(DraftKind.NOISE, content.reason());
            case UNSTATED ->
                word.isPresent() && kind(word.get().value()).isPresent()
                        ? said(kind(word.get().value()).get(), word)
                        : new Guess<>(DraftKind.WAVEFORM, content.reason());
        };
    }

    private static boolean is(Optional<Guess<KindWord>> word, KindWord kind) {
        return word.filter(w -> w.value() == kind).isPresent();
    }

    private static Optional<DraftKind> kind(KindWord word) {
        return switch (word) {
            case RESPONSE -> Optional.of(DraftKind.RESPONSE);
            case NOISE -> Optional.of(DraftKind.NOISE);
            case LISTENING -> Optional.of(DraftKind.LISTENING);
            case JUNCTION -> Optional.empty();
        };
    }

    private static Guess<DraftKind> said(DraftKind kind, Optional<Guess<KindWord>> word) {
        return new Guess<>(kind, word.orElseThrow().reason());
    }

    private Guess<DraftKind> tone(DraftedExport source, Optional<Guess<KindWord>> word, boolean alone) {
        String reason = source.content().reason();
        double frequency = tones(source.content()).findFirst().orElseThrow();
        boolean other = stimulus.isEmpty() || !(Math.abs(frequency / stimulus.getAsDouble() - 1) < SAME);
        if (is(word, KindWord.NOISE) && other) {
            return new Guess<>(DraftKind.NOISE, word.orElseThrow().reason() + ", and its tone is not the stimulus");
        }
        if (is(word, KindWord.RESPONSE)) {
            return new Guess<>(
                    DraftKind.RESPONSE, reason + ", " + word.orElseThrow().reason());
        }
        if (is(word, KindWord.LISTENING)) {
            return said(DraftKind.LISTENING, word);
        }
        boolean single = alone && source.content().channels().size() == 1;
        if (single && stimulus.isPresent() && other && isMains(frequency)) {
            return new Guess<>(DraftKind.NOISE, reason + ", which is the mains and not the stimulus of the others");
        }
        return new Guess<>(DraftKind.WAVEFORM, reason);
    }

    private static Guess<DraftKind> played(DraftedExport source, Optional<Guess<KindWord>> word) {
        boolean sound = source.path().toLowerCase(Locale.ROOT).endsWith(SOUND);
        if (is(word, KindWord.LISTENING) || (sound && word.isEmpty())) {
            return new Guess<>(DraftKind.LISTENING, source.content().reason());
        }
        return word.isPresent() && kind(word.get().value()).isPresent()
                ? said(kind(word.get().value()).get(), word)
                : new Guess<>(DraftKind.NOISE, source.content().reason());
    }

    /** Frequencies of the tones of an export, in the order of its channels, Hz. */
    static Stream<Double> tones(Content content) {
        return content.channels().stream().flatMap(c -> c.frequency().stream().boxed());
    }

    private static boolean isMains(double frequency) {
        return MAINS.stream().anyMatch(m -> Math.abs(frequency / m - 1) < NEAR_MAINS);
    }
}
