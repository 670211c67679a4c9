package clipwitness.report.build;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.reason.DoubtReason;
import clipwitness.words.WordBundle;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each way in which a capture is doubted has its meaning in plain words. */
class PlainDoubtsTest {
    /** Words of the bench, and of the command line, that nobody needs who listens. */
    private static final Pattern OF_THE_BENCH = Pattern.compile(
            "converter|least-squares|column|option|preamble|grid|stamp|fundamental|small signals|low-pass|high-pass|byte|kHz|\\{",
            Pattern.CASE_INSENSITIVE);

    @ParameterizedTest
    @EnumSource(DoubtReason.class)
    void everyDoubtIsToldWithoutWordsOfTheBench(DoubtReason reason) {
        String line = PlainDoubts.line(reason);
        assertThat(WordBundle.builtIn().has(line)).as(line).isTrue();
        assertThat(WordBundle.builtIn().say(line)).doesNotContainPattern(OF_THE_BENCH);
    }
}
