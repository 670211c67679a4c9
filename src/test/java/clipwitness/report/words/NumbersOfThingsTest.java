package clipwitness.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Condition;
import clipwitness.fixture.ExampleJob;
import clipwitness.words.WordBundle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** One, both, all, some: how a sentence speaks of so many settings, figures and states, in both languages. */
class NumbersOfThingsTest {
    private static final JobWording ENGLISH =
            Sentences.wording(ExampleJob.good().results());
    private static final JobWording GERMAN = german();

    private static JobWording german() {
        try {
            String words = Files.readString(Path.of("report-templates/common/words-de.properties"));
            return new JobWording(WordBundle.of(words), ExampleJob.good().results());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<Condition> gains(double... percent) {
        return Arrays.stream(percent)
                .mapToObj(g -> new Condition(
                        OptionalDouble.of(g),
                        Condition.NONE.frequency(),
                        Condition.NONE.level(),
                        Condition.NONE.setting()))
                .toList();
    }

    @Test
    void settingsThatWereAllMeant() {
        assertThat(settings(ENGLISH, 50)).isEqualTo("the one gain setting captured");
        assertThat(settings(ENGLISH, 0, 100)).isEqualTo("both gain settings");
        assertThat(settings(ENGLISH, 0, 50, 100)).isEqualTo("all three gain settings");
        assertThat(settings(GERMAN, 50)).isEqualTo("der einen aufgenommenen Gain-Stellung");
        assertThat(settings(GERMAN, 0, 100)).isEqualTo("beiden Gain-Stellungen");
        assertThat(settings(GERMAN, 0, 50, 100)).isEqualTo("allen drei Gain-Stellungen");
    }

    private static String settings(JobWording wording, double... percent) {
        return wording.settings(gains(percent), gains(percent));
    }

    @Test
    void settingsOfWhichOthersWereCapturedToo() {
        List<Condition> captured = gains(0, 25, 50, 75);
        assertThat(ENGLISH.settings(gains(0), captured)).isEqualTo("the one gain setting where it is judged");
        assertThat(ENGLISH.settings(gains(0, 25), captured)).isEqualTo("both gain settings where it is judged");
        assertThat(ENGLISH.settingsOf(gains(0, 25, 50), captured)).isEqualTo("three of four gain settings");
        assertThat(GERMAN.settings(gains(0), captured)).isEqualTo("der einen beurteilten Gain-Stellung");
        assertThat(GERMAN.settings(gains(0, 25), captured)).isEqualTo("beiden beurteilten Gain-Stellungen");
        assertThat(GERMAN.settingsOf(gains(0, 25, 50), captured)).isEqualTo("drei von vier Gain-Stellungen");
    }

    @Test
    void figures() {
        assertThat(Stream.of(1, 2, 13).map(ENGLISH::items)).containsExactly("one figure", "two figures", "13 figures");
        assertThat(ENGLISH.items(1, 6)).isEqualTo("one of six figures");
        assertThat(ENGLISH.items(2, 29)).isEqualTo("2 of 29 figures");
        assertThat(Stream.of(1, 2, 13).map(GERMAN::items)).containsExactly("ein Wert", "zwei Werte", "13 Werte");
        assertThat(GERMAN.items(1, 6)).isEqualTo("eins von sechs Werten");
        assertThat(GERMAN.counted("items.further", 1)).isEqualTo("ein weiterer Wert liegt");
        assertThat(GERMAN.counted("items.further", 3)).isEqualTo("drei weitere Werte liegen");
    }

    @Test
    void states() {
        assertThat(ENGLISH.list(List.of("as received"))).isEqualTo("as received");
        assertThat(ENGLISH.list(List.of("as received", "new pair"))).isEqualTo("as received and new pair");
        assertThat(ENGLISH.list(List.of("as received", "old pair", "new pair")))
                .isEqualTo("as received, old pair and new pair");
        assertThat(GERMAN.list(List.of("wie geliefert", "neues Paar"))).isEqualTo("wie geliefert und neues Paar");
        assertThat(GERMAN.list(List.of("wie geliefert", "altes Paar", "neues Paar")))
                .isEqualTo("wie geliefert, altes Paar und neues Paar");
    }
}
