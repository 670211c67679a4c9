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
import clipwitness.reason.Word;
import java.util.List;
import java.util.stream.Stream;
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
        assertThat(SPEECH.clause(framed)).isEqualTo("for As received, not reached");
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

    /** SI brochure, 9th edition, 5.4: the minus is not a hyphen; a change that rounds to nothing has no sign. */
    @Test
    void aMinusIsATrueOneInEachStyle() {
        assertThat(shift(Argument.signed(-4.96, Unit.PERCENT, 1))).startsWith("turning it by −5.0 %");
        assertThat(shift(Argument.decimals(-4.96, Unit.PERCENT, 1))).startsWith("turning it by −5.0 %");
        assertThat(shift(Argument.significant(-4.96, Unit.PERCENT, 2))).startsWith("turning it by −5.0 %");
        assertThat(shift(Argument.plain(-4.96, Unit.PERCENT, 2))).startsWith("turning it by −5.0 %");
        assertThat(shift(Argument.written(-0.5, Unit.PERCENT))).startsWith("turning it by −0.5 %");
        assertThat(shift(Argument.decimals(-0.04, Unit.PERCENT, 1))).startsWith("turning it by 0.0 %");
    }

    /** A hundred and twenty-three with two digits is 120, not 1.2e+02. */
    @Test
    void aLargeNumberIsWrittenOut() {
        assertThat(shift(Argument.significant(123.4, Unit.PERCENT, 2))).startsWith("turning it by 120 %");
    }

    private static String shift(Argument by) {
        return SPEECH.text(Remark.of(HintRemark.KNOB_OFFSET_BY, by, Argument.plain(0.1, Unit.DECIBEL, 2)));
    }

    @Test
    void theEndOfTheGainControlHasOneName() {
        assertThat(SPEECH.text(Word.gain(100))).isEqualTo("full gain");
        assertThat(SPEECH.text(Word.gain(62.5))).isEqualTo("62.5\u00a0% gain");
        assertThat(SPEECH.text(Word.gain(0))).isEqualTo("0\u00a0% gain");
    }

    /** Three statements that differ in their numbers only, as one. */
    @Test
    void statementsOfOneFormAreSaidWithTheRangeOfTheirNumbers() {
        List<Reason> periods = Stream.of(2.25, 1.5, 2.75)
                .map(p -> Reason.of(DoubtReason.FEW_PERIODS, Argument.decimals(p, Unit.ONE, 2)))
                .toList();
        assertThat(SPEECH.text(periods))
                .isEqualTo("the record holds 1.50\u00a0to\u00a02.75 periods of the fundamental");
        assertThat(SPEECH.text(List.of(periods.get(0), periods.get(0))))
                .isEqualTo("the record holds 2.25 periods of the fundamental");
    }

    @Test
    void statementsAboutOtherNamesOrPlacesAreOfAnotherForm() {
        assertThat(Reason.of(DoubtReason.AC_COUPLED, Argument.name("CH1")).form())
                .isNotEqualTo(
                        Reason.of(DoubtReason.AC_COUPLED, Argument.name("CH2")).form());
        assertThat(Reason.of(DoubtReason.NOT_COMPARABLE_TWO_ROWS, Argument.place(3))
                        .form())
                .isNotEqualTo(Reason.of(DoubtReason.NOT_COMPARABLE_TWO_ROWS, Argument.place(4))
                        .form());
        assertThat(Reason.of(DoubtReason.FEW_PERIODS, Argument.decimals(1, Unit.ONE, 2))
                        .form())
                .isEqualTo(Reason.of(DoubtReason.FEW_PERIODS, Argument.decimals(2, Unit.ONE, 2))
                        .form());
    }
}
