package clipwitness.report.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a line may end, which a reader of figures expects: no unit and no uncertainty begins a line. */
class WordBreakerTest {
    @ParameterizedTest
    @CsvSource({
        "depth −11.0 dB, depth |−11.0 dB",
        "moved by 2.3 ± 0.4 % of its size, moved |by |2.3 ± 0.4 % |of |its |size",
        "5 periods of 50 Hz, 5 |periods |of |50 Hz",
        "at 12 sites; 3 V. Then, at |12 |sites; |3 V. |Then",
        "beyond 90° or 16 °C, beyond |90° |or |16 °C",
        "on 2026-04-28, on |2026-04-28",
        "above the 2–7 range, above |the |2–7 |range",
        "guard-banded rule, guard-|banded |rule",
        "captures/new-000.csv, captures/|new-000.csv",
        "one, one"
    })
    void numbersAndDatesStayWhole(String text, String parts) {
        assertThat(String.join("|", parts(text))).isEqualTo(parts);
    }

    @Test
    void aWordTooLongForAColumnMayEndWithin() {
        assertThat(parts("a " + "x".repeat(36) + " b"))
                .containsExactly("a ", "xxxxxxxx", "xxxxxxxx", "xxxxxxxx", "xxxxxxxx", "xxxx ", "b");
        assertThat(parts("x".repeat(33))).hasSize(1);
    }

    @Test
    void aQuantityIsNoLongWordAndASignOfTwoUnitsStaysWhole() {
        String quantities = "(null\u00A0depth\u00A0−37.90\u00A0±\u00A00.80\u00A0dB\u00A0at\u00A0100\u00A0%\u00A0gain)";
        assertThat(parts(quantities)).hasSize(1);
        assertThat(parts("x".repeat(7) + "\uD83E\uDDF0".repeat(20)))
                .allMatch(part -> !Character.isLowSurrogate(part.charAt(0)));
    }

    private static List<String> parts(String text) {
        WordBreaker breaker = new WordBreaker();
        breaker.setText(text);
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int to = breaker.next(); to >= 0; to = breaker.next()) {
            parts.add(text.substring(from, to));
            from = to;
        }
        return parts;
    }
}
