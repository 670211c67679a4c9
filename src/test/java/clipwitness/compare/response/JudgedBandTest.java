package clipwitness.compare.response;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

class JudgedBandTest {
    private static final double LIMIT = 0.5;

    private static Measured change(double decibels, double expanded) {
        return Measured.of(decibels, Unit.DECIBEL, new Contribution(Source.NOISE, expanded / 2));
    }

    @Test
    void theUncertainEndsOfASweepAreNotJudged() {
        assertEquals(
                new JudgedBand(1, 2),
                JudgedBand.of(List.of(change(0, 2.1), change(0, 0.1), change(0.1, 0.02), change(0.2, 0.9)), LIMIT));
    }

    @Test
    void anUncertainFrequencyBetweenCertainOnesIsJudged() {
        assertEquals(
                new JudgedBand(0, 2), JudgedBand.of(List.of(change(0, 0.1), change(0, 0.9), change(0, 0.1)), LIMIT));
    }

    @Test
    void aChangeThatShowsInSpiteOfItsUncertaintyIsJudgedAtTheEndToo() {
        assertEquals(new JudgedBand(0, 1), JudgedBand.of(List.of(change(-6, 2.1), change(0, 0.1)), LIMIT));
    }

    @Test
    void aSweepThatIsUncertainThroughoutIsJudgedThroughout() {
        assertEquals(new JudgedBand(0, 1), JudgedBand.of(List.of(change(0, 2), change(0, 2)), LIMIT));
    }
}
