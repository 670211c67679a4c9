package clipwitness.words;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.BenchRemark;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.FigureReason;
import clipwitness.reason.FrameReason;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Reason;
import clipwitness.reason.Remark;
import org.junit.jupiter.api.Test;

class SpeechTest {
    private static final Speech SPEECH = Speech.ENGLISH;

    /** A doubt is a sentence in the list of doubts, and a clause behind the figures that it refuses. */
    @Test
    void aDoubtIsASentenceOrAClause() {
        Reason twoRows = Reason.of(DoubtReason.REPEATED_TIME_ROWS);
        assertThat(SPEECH.text(twoRows)).startsWith("Every time stamp").endsWith("measured as a wave.");
        assertThat(SPEECH.clause(twoRows)).startsWith("every time stamp").endsWith("measured as a wave");
    }

    @Test
    void aNameKeepsItsCapitalInAClause() {
        Reason columns =
                Reason.of(DoubtReason.REPEATED_TIME_COLUMNS, Argument.name("CH1 min"), Argument.name("CH1 max"));
        assertThat(SPEECH.clause(columns)).startsWith("CH1 min and CH1 max are");
    }

    @Test
    void aSentenceInsideAnotherEndsWithOneFullStop() {
        for (DoubtReason doubt : new DoubtReason[] {DoubtReason.AC_COUPLED_TABLE, DoubtReason.NO_FUNDAMENTAL}) {
            Remark remark = Remark.of(BenchRemark.DOUBTED, Argument.name("a.csv"), Argument.sentence(Reason.of(doubt)));
            assertThat(SPEECH.text(remark)).startsWith("a.csv: ").endsWith(".").doesNotEndWith("..");
        }
    }

    @Test
    void aFramedReasonIsCalledByItsCore() {
        Reason framed = Reason.of(
                FrameReason.IN_STATE,
                Argument.name("As received"),
                Argument.inner(Reason.of(FigureReason.NOT_REACHED)));
        assertThat(SPEECH.clause(framed)).isEqualTo("in “As received”: not reached");
        assertThat(framed.resultCode()).isEqualTo("not-reached");
        assertThat(framed.is(FigureReason.NOT_REACHED)).isTrue();
    }

    /** Only the decimal mark differs from language to language. */
    @Test
    void numbersStandInTheLanguageOfTheReport() {
        Speech german = new Speech(WordBundle.builtIn(), NumberText.in("de"));
        assertThat(german.text(Reason.of(DoubtReason.FEW_PERIODS, Argument.decimals(2.5, Unit.ONE, 2))))
                .isEqualTo("the record holds 2,50 periods of the fundamental");
        assertThat(german.text(Remark.of(
                        HintRemark.KNOB_OFFSET_BY,
                        Argument.signed(4.96, Unit.PERCENT, 1),
                        Argument.plain(0.126, Unit.DECIBEL, 2))))
                .isEqualTo(
                        "turning it by +5,0 % of its rotation leaves no change of level or distortion above 0,13 dB");
    }
}
