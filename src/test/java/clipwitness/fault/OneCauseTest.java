package clipwitness.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class OneCauseTest {
    @Test
    void oneMistakeInManyFilesIsOneMessageThatNamesThem() {
        assertThat(told(IntStream.rangeClosed(1, 4).mapToObj(i -> ofFile("g" + i + ".csv", "it has no time"))))
                .containsExactly("g1.csv: it has no time (likewise in g2.csv, g3.csv and g4.csv). Add it");
        assertThat(told(IntStream.rangeClosed(1, 12).mapToObj(i -> ofFile(i + ".csv", "it has no time"))))
                .containsExactly(
                        "1.csv: it has no time (likewise in 2.csv, 3.csv, 4.csv, 5.csv, 6.csv, 7.csv, 8.csv, 9.csv"
                                + " and 3 others). Add it");
    }

    @Test
    void messagesThatQuoteDifferentTextsStandAloneUnlessTheyAreMany() {
        assertThat(told(IntStream.rangeClosed(2, 5).mapToObj(i -> ofLine(i, "'" + i + "' is no number"))))
                .hasSize(4);
        assertThat(told(IntStream.rangeClosed(2, 6).mapToObj(i -> ofLine(i, "'" + i + "' is no number"))))
                .containsExactly("captures.csv, line 2, gain: '2' is no number (likewise on lines 3 to 6). Add it");
    }

    @Test
    void twoCausesStayTwoMessagesInTheirOrder() {
        assertThat(told(Stream.of(ofLine(2, "it is odd"), ofLine(3, "it is even"), ofLine(4, "it is odd"))))
                .containsExactly(
                        "captures.csv, line 2, gain: it is odd (likewise on line 4). Add it",
                        "captures.csv, line 3, gain: it is even. Add it");
    }

    private static List<String> told(Stream<Problem> problems) {
        return new InputException(problems.toList())
                .problems().stream().map(Problem::message).toList();
    }

    private static Problem ofFile(String file, String what) {
        return new Problem(ErrorCode.NO_INTERVAL, Origin.of(file), what, "Add it");
    }

    private static Problem ofLine(int line, String what) {
        return new Problem(ErrorCode.BAD_VALUE, new Origin("captures.csv", line, "gain"), what, "Add it");
    }
}
