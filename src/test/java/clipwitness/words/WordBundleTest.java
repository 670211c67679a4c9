package clipwitness.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.fault.InputException;
import org.junit.jupiter.api.Test;

class WordBundleTest {
    private static final WordBundle OWN = WordBundle.of("""
            # a comment
            greeting = Hello {name}, it is {time}.
            parting  = Good bye
            """);

    @Test
    void holesAreFilledByName() {
        assertThat(OWN.say("greeting", "time", "noon", "name", "$1 {x}")).isEqualTo("Hello $1 {x}, it is noon.");
    }

    @Test
    void aPartInBracketsVanishesWithTheTextOfItsHole() {
        WordBundle words = WordBundle.of("moved = It moved[ by {change}][, at {place}|, everywhere]: [{x}] {note}");
        assertThat(words.say("moved", "change", "1 dB", "place", "full gain", "x", "y", "note", "[{z}]"))
                .isEqualTo("It moved by 1 dB, at full gain: y [{z}]");
        assertThat(words.say("moved", "change", "", "place", "", "x", "", "note", "n"))
                .isEqualTo("It moved, everywhere:  n");
    }

    @Test
    void bracesAroundAnythingButOneNameStay() {
        WordBundle words = WordBundle.of("set = {a b} {} {{x}} {x");
        assertThat(words.say("set", "x", "{x}")).isEqualTo("{a b} {} {{x}} {x");
    }

    /** A translation may need the hole elsewhere, or not at all; it may not ask for one that is never filled. */
    @Test
    void aHoleInBracketsIsAHole() throws InputException {
        WordBundle words = WordBundle.of("moved = [At {place} it|It] moved");
        assertThat(words.reworded("moved = Es wanderte[ bei {place}]", "w").say("moved", "place", ""))
                .isEqualTo("Es wanderte");
        assertThatThrownBy(() -> words.reworded("moved = Es wanderte[ bei {ort}]", "w"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("'moved' has a hole that is never filled");
        assertThatThrownBy(() -> words.say("moved"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("hole place of sentence moved stays open");
    }

    /** A noun in German is written with a capital in the middle of a sentence, too. */
    @Test
    void aFirstWordInBracketsKeepsItsCapital() {
        WordBundle words = WordBundle.of("a = [Rauschen] liegt darüber\nb = Es rauscht\nc = [Bei {x} der|Der] Pegel\n");
        assertThat(words.say("a")).isEqualTo("Rauschen liegt darüber");
        assertThat(words.beginsWithWord("a")).isFalse();
        assertThat(words.beginsWithWord("b")).isTrue();
        assertThat(words.beginsWithWord("c")).isTrue();
    }

    @Test
    void anOpenHoleIsOurMistake() {
        assertThatThrownBy(() -> OWN.say("greeting", "name", "A"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("hole time of sentence greeting stays open");
    }

    @Test
    void aTemplateRewordsSomeSentencesAndKeepsTheOthers() throws InputException {
        WordBundle words = OWN.reworded("greeting = {time}: {name}", "x/words.properties");
        assertThat(words.say("greeting", "name", "A", "time", "noon")).isEqualTo("noon: A");
        assertThat(words.say("parting")).isEqualTo("Good bye");
    }

    @Test
    void everyFaultOfARewordingNamesFileAndLine() {
        assertThatThrownBy(() -> OWN.reworded("\ngreting = Hi\ngreeting = {nam}\n", "x/words.properties"))
                .isInstanceOf(InputException.class)
                .hasMessage(
                        "x/words.properties, line 2: the report makes no sentence called 'greting'. Did you mean 'greeting'? "
                                + "clipwitness template customer FOLDER writes a words.properties with all its sentences\n"
                                + "x/words.properties, line 3: 'greeting' has a hole that is never filled. Use only these: "
                                + "[name, time]");
    }
}
