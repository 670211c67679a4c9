package clipwitness.words;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.reason.DoubtCode;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.HintCode;
import clipwitness.reason.Phrase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The codes of reasons and remarks, and words.properties, belong together. */
class EveryPhraseHasItsLineTest {
    private static final WordBundle WORDS = WordBundle.builtIn();

    static Stream<Phrase> phrases() {
        return constants(Phrase.class).stream();
    }

    /** All constants of the enums below a sealed interface. */
    private static List<Phrase> constants(Class<?> sealed) {
        List<Phrase> constants = new ArrayList<>();
        for (Class<?> permitted : sealed.getPermittedSubclasses()) {
            if (permitted.isEnum()) {
                Arrays.stream(permitted.getEnumConstants())
                        .map(Phrase.class::cast)
                        .forEach(constants::add);
            } else {
                constants.addAll(constants(permitted));
            }
        }
        return constants;
    }

    @ParameterizedTest
    @MethodSource("phrases")
    void thePhraseHasALineWithItsHoles(Phrase phrase) {
        assertThat(WORDS.has(phrase.key())).as("a line " + phrase.key()).isTrue();
        assertThat(WORDS.holesOf(phrase.key())).as(phrase.key()).isEqualTo(new HashSet<>(phrase.holes()));
        assertThat(WORDS.holesOf(phrase.key())).as("each hole once").hasSameSizeAs(phrase.holes());
    }

    @Test
    void noTwoPhrasesShareALine() {
        assertThat(phrases().map(Phrase::key)).doesNotHaveDuplicates();
    }

    /** Lines of other prefixes are the report's own. */
    @Test
    void noLineIsLeftWithoutAPhrase() {
        Set<String> keys = new HashSet<>();
        phrases().map(Phrase::key).forEach(keys::add);
        assertThat(WORDS.names().stream()
                        .filter(n -> n.matches("(reason|remedy|hint|word|bench\\.missing|clipper\\.source)\\..*")))
                .isNotEmpty()
                .allMatch(keys::contains);
    }

    @Test
    void theNamesOfTheContractAreKept() {
        assertThat(Arrays.stream(HintCode.values()).map(HintCode::code))
                .contains(
                        "states-swapped",
                        "one-side-not-clipping",
                        "not-clipping",
                        "no-output",
                        "inverted",
                        "leg-mismatch",
                        "knob-offset");
        Set<DoubtCode> raised = EnumSet.noneOf(DoubtCode.class);
        Arrays.stream(DoubtReason.values()).map(DoubtReason::doubt).forEach(raised::add);
        assertThat(EnumSet.complementOf(EnumSet.copyOf(raised))).isEmpty();
    }
}
