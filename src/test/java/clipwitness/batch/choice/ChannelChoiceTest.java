package clipwitness.batch.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.capture.Channel;
import clipwitness.capture.Condition;
import clipwitness.capture.Samples;
import clipwitness.capture.TimeRecord;
import clipwitness.fault.InputException;
import clipwitness.fixture.TestRow;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.quantity.Unit;
import clipwitness.reason.Doubt;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ChannelChoiceTest {
    @Test
    void theOnlyChannelIsTheOutput() throws InputException {
        ChannelChoice choice = ChannelChoice.of(row("", ""), record("CH1"));
        assertThat(choice.output().name()).isEqualTo("CH1");
        assertThat(choice.input()).isEmpty();
    }

    @Test
    void ofTwoChannelsTheFirstIsTheInput() throws InputException {
        ChannelChoice choice = ChannelChoice.of(row("", ""), record("CH1", "CH2"));
        assertThat(choice.output().name()).isEqualTo("CH2");
        assertThat(choice.input()).map(Channel::name).contains("CH1");
    }

    @Test
    void ofTwoChannelsTheOneThatIsNotNamedIsTheOther() throws InputException {
        assertThat(ChannelChoice.of(row("", "CH1"), record("CH1", "CH2")).input())
                .map(Channel::name)
                .contains("CH2");
        assertThat(ChannelChoice.of(row("2", ""), record("CH1", "CH2")).output().name())
                .isEqualTo("CH1");
    }

    @Test
    void channelsAreNamedByNumberTooAndWhateverTheirCase() throws InputException {
        ChannelChoice choice = ChannelChoice.of(row("ch3", "2"), record("CH1", "CH2", "CH3"));
        assertThat(choice.output().name()).isEqualTo("CH2");
        assertThat(choice.input()).map(Channel::name).contains("CH3");
    }

    @Test
    void namesThatContradictTheOrderOfTwoChannelsAreTold() {
        assertThat(ChannelOrder.doubt(row("", ""), record("out", "in")))
                .map(Doubt::severity)
                .contains(Severity.WARNING);
        assertThat(ChannelOrder.doubt(row("", ""), record("CH1", "Gen_IN"))).isPresent();
        assertThat(ChannelOrder.doubt(row("", ""), record("in", "out"))).isEmpty();
        assertThat(ChannelOrder.doubt(row("", ""), record("CH1", "CH2"))).isEmpty();
        assertThat(ChannelOrder.doubt(row("", "out"), record("out", "in"))).isEmpty();
    }

    @Test
    void threeChannelsNeedAWord() {
        assertThatThrownBy(() -> ChannelChoice.of(row("", ""), record("CH1", "CH2", "CH3")))
                .isInstanceOf(InputException.class)
                .hasMessage(
                        "captures.csv, line 7, output: a.csv has 3 channels (CH1, CH2, CH3) and the row does not say which is"
                                + " the output. Write the channel's name or number in column output");
    }

    @Test
    void aChannelThatIsNotThereIsNamedWithThoseThatAre() {
        assertThatThrownBy(() -> ChannelChoice.of(row("", "CH4"), record("CH1", "CH2")))
                .isInstanceOf(InputException.class)
                .hasMessage(
                        "captures.csv, line 7, output: a.csv has no channel 'CH4'. Its channels are CH1, CH2; a number from 1 to"
                                + " 2 serves too");
    }

    private static TimeRecord record(String... names) {
        List<Channel> channels = new ArrayList<>();
        for (String name : names) {
            channels.add(
                    new Channel(name, channels.size() + 1, Optional.of(Unit.VOLT), Samples.of(0, 1), Optional.empty()));
        }
        return new TimeRecord("a.csv", 0, 1e-6, channels, List.of(), List.of());
    }

    static CaptureRow row(String input, String output) {
        Condition none =
                new Condition(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());
        return new TestRow(
                        7,
                        "a.csv",
                        "before",
                        CaptureKind.WAVEFORM,
                        none,
                        1,
                        text(input),
                        text(output),
                        Optional.empty())
                .row();
    }

    private static Optional<String> text(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }
}
