package clipwitness.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ColumnTest {
    @Test
    void decimalMarksStandUnderOneAnotherWhenSetFlushRight() {
        assertThat(AlignedNumbers.align(List.of("−41.2", "0.078", "12", "–", "")))
                .containsExactly("−41.2\u2007\u2007", "0.078", "12\u00A0\u2007\u2007\u2007", "–", "");
    }

    @Test
    void aDecimalCommaIsAMarkToo() {
        assertThat(AlignedNumbers.align(List.of("1,5", "2,25"))).containsExactly("1,5\u2007", "2,25");
    }

    @Test
    void wholeNumbersStayAsTheyAre() {
        assertThat(AlignedNumbers.align(List.of("1", "22"))).containsExactly("1", "22");
    }
}
