package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Channel;
import clipwitness.capture.CurveTable;
import clipwitness.capture.Export;
import clipwitness.capture.Samples;
import clipwitness.capture.TimeRecord;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveValues;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.FrameReason;
import clipwitness.reason.LayoutRemark;
import clipwitness.reason.Reason;
import clipwitness.reason.Remark;
import clipwitness.reason.Severity;
import clipwitness.reason.Word;
import clipwitness.report.data.Look;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LookTextTest {
    @Test
    void aCurveIsCountedInPoints() {
        Channel volts = channel("V", Optional.of(Unit.VOLT), 0.1, 0.65);
        Export curve =
                new CurveTable("d1.csv", List.of(volts), List.of(), List.of(Remark.of(LayoutRemark.ENCODING_ASCII)));
        assertThat(text(new Look(curve, List.of(new Look.ChannelLook(volts, Optional.empty())), List.of())))
                .isEqualTo("""
                        d1.csv: curve of current against voltage, 2 points
                          V   100.0 mV to 650.0 mV
                          read so:
                            encoding ASCII
                          The curve is fit to compare.
                        """);
    }

    @Test
    void aDistortionLostInNoiseIsGivenAsTheBoundBelowWhichItLies() {
        Channel out = channel("OUT", Optional.of(Unit.VOLT), -1, 1);
        WaveformResult wave = WaveValues.of(Map.of(
                WaveformQuantity.FREQUENCY,
                Measured.of(1_000, Unit.HERTZ),
                WaveformQuantity.THD,
                Measured.withNoise(0.02, Unit.PERCENT, 0.04).asUpperBound()));
        assertThat(text(look(new Look.ChannelLook(out, Optional.of(wave)))))
                .contains("  OUT   −1.000 V to 1.000 V   1.000 kHz   THD below 0.10 %\n");
    }

    @Test
    void aUnitThatIsNotKnownAndAChannelWithoutValuesAreCalledSo() {
        Channel unknown = channel("CH1", Optional.empty(), -3, 120);
        Channel empty = channel("CH2", Optional.of(Unit.VOLT), Double.NaN, Double.NaN);
        String shown = text(
                look(new Look.ChannelLook(unknown, Optional.empty()), new Look.ChannelLook(empty, Optional.empty())));
        assertThat(shown).contains("  CH1   −3.000 to 120.0 (unit not known)\n").contains("  CH2   no values\n");
    }

    @Test
    void aDoubtStandsWithItsWeightAndCode() {
        Channel out = channel("OUT", Optional.of(Unit.VOLT), -1, 1);
        Doubt doubt = Doubt.of(Severity.WARNING, DoubtReason.FEW_PERIODS, Argument.decimals(2, Unit.ONE, 2));
        Look look = new Look(record(out), List.of(new Look.ChannelLook(out, Optional.empty())), List.of(doubt));
        assertThat(text(look)).contains("  warning few-periods: the record holds 2.00 periods of the fundamental\n");
    }

    @Test
    void theLastSentenceSaysWhetherARecordIsFitToMeasure() {
        Channel out = channel("OUT", Optional.of(Unit.VOLT), -1, 1);
        WaveformResult wave = WaveValues.of(Map.of(WaveformQuantity.FREQUENCY, Measured.of(1_000, Unit.HERTZ)));
        List<Look.ChannelLook> periodic = List.of(new Look.ChannelLook(out, Optional.of(wave)));
        Doubt few = Doubt.of(Severity.WARNING, DoubtReason.FEW_PERIODS, Argument.decimals(2, Unit.ONE, 2));
        assertThat(last(new Look(record(out), periodic, List.of()))).isEqualTo("The record is fit to measure.");
        assertThat(last(new Look(record(out), periodic, List.of(few))))
                .isEqualTo("The record is fit to measure; mind the warnings above (few-periods).");
        assertThat(last(look(new Look.ChannelLook(out, Optional.empty()))))
                .isEqualTo("The record is fit to measure as noise only, for no channel holds a periodic wave.");
    }

    @Test
    void theLastSentenceNamesEachDoubtThatRefusesWithItsRemedy() {
        Channel out = channel("OUT", Optional.of(Unit.VOLT), -1, 1);
        List<Look.ChannelLook> channels = List.of(new Look.ChannelLook(out, Optional.empty()));
        Doubt peaks = Doubt.of(Severity.REFUSAL, DoubtReason.REPEATED_TIME_ROWS);
        Reason clipped = Reason.of(
                FrameReason.IN_CHANNEL,
                Argument.name("OUT"),
                Argument.inner(
                        Reason.of(DoubtReason.OVER_RANGE_SILENT, Argument.count(5), Argument.word(Word.UPPER_HALF))));
        assertThat(last(new Look(record(out), channels, List.of(peaks, new Doubt(Severity.REFUSAL, clipped)))))
                .isEqualTo(
                        "The record is not fit to measure: the rows hold the extremes of intervals and no samples (capture"
                                + " again without peak detect); in OUT the wave runs into the end of the converter's range"
                                + " (capture it again with more volts a division).");
    }

    private static String last(Look look) {
        List<String> lines = text(look).lines().toList();
        return lines.get(lines.size() - 1).strip();
    }

    /** The text with plain blanks, where numbers are held together with their units. */
    private static String text(Look look) {
        return LookText.of(look).replace('\u00a0', ' ');
    }

    private static Look look(Look.ChannelLook... channels) {
        List<Look.ChannelLook> all = List.of(channels);
        Channel[] of = all.stream().map(Look.ChannelLook::channel).toArray(Channel[]::new);
        return new Look(record(of), all, List.of());
    }

    private static TimeRecord record(Channel... channels) {
        return new TimeRecord("a.csv", 0, 1e-6, List.of(channels), List.of(), List.of());
    }

    private static Channel channel(String name, Optional<Unit> unit, double... values) {
        return new Channel(name, 1, unit, Samples.of(values), Optional.empty());
    }
}
