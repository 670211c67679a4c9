package clipwitness.job;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names for sentences: what a label says, without what stands before the comma, in at most four words. */
class ShortNameTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "As received | received | en | as received",
                "After, new position | new | en | new position",
                "After, LED clippers | new | en | LED clippers",
                "After, 1N4148 pair | new | en | 1N4148 pair",
                "As received, contact held | received | en | as received",
                "As received, with all the parts that the unit came with | received | en | as received",
                "After the work on both of the clipping pairs | both-pairs | en | both pairs",
                "Danach, neue Stellung | neu | de | neue Stellung",
                "Wie geliefert | vorher | de | Wie geliefert",
                "Ωμέγα | omega | el | ωμέγα",
            })
    void aShortNameFollowsFromTheLabel(String label, String name, String language, String called) {
        assertThat(ShortName.of(label, name, language)).isEqualTo(called);
    }

    @ParameterizedTest
    @CsvSource({"new position, 2", "' one  two three ', 3", "'', 0"})
    void wordsAreCounted(String text, int words) {
        assertThat(ShortName.words(text)).isEqualTo(words);
    }
}
