package clipwitness.batch.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.capture.Channel;
import clipwitness.capture.CurveTable;
import clipwitness.capture.Export;
import clipwitness.capture.Samples;
import clipwitness.fault.InputException;
import clipwitness.quantity.Unit;
import clipwitness.words.Speech;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CurveChoiceTest {
    @Test
    void unitsTellVoltageAndCurrentInEitherOrder() throws InputException {
        CurveChoice choice = CurveChoice.of(curve("Test A", "Drive V"));
        assertThat(choice.voltage().name()).isEqualTo("Drive");
        assertThat(choice.current().name()).isEqualTo("Test");
        assertThat(choice.more()).isEmpty();
    }

    @Test
    void withoutUnitsTheNamesTellThem() throws InputException {
        CurveChoice choice = CurveChoice.of(curve("I_D", "U_D"));
        assertThat(choice.voltage().name()).isEqualTo("U_D");
        assertThat(choice.current().name()).isEqualTo("I_D");
    }

    @Test
    void aColumnOfUncertaintyIsOne() throws InputException {
        CurveChoice choice = CurveChoice.of(curve("U V", "I A", "dU V", "sigma I A"));
        assertThat(choice.curve().voltsSigma()).isPresent();
        assertThat(choice.curve().amperesSigma()).isPresent();
        assertThat(choice.more()).isEmpty();
    }

    @Test
    void aSecondCurrentIsSaidNotToBeUsed() throws InputException {
        assertThat(CurveChoice.of(curve("Voltage V", "Current 1 A", "Current 2 A"))
                        .more()
                        .map(Speech.ENGLISH::text))
                .contains("only Voltage and Current 1 are read; Current 2 is not used");
        assertThat(CurveChoice.of(curve("V1 V", "I1 A", "V2 V", "I2 A")).more().map(Speech.ENGLISH::text))
                .contains("only V1 and I1 are read; V2, I2 are not used");
    }

    @Test
    void aCurrentThatTheRowNamesIsNoAccident() throws InputException {
        CurveChoice choice = CurveChoice.of(
                ChannelChoiceTest.row("", "Current 2"), curve("Voltage V", "Current 1 A", "Current 2 A"));
        assertThat(choice.current().name()).isEqualTo("Current 2");
        assertThat(choice.more()).isEmpty();
    }

    @Test
    void aColumnThatIsNotThereIsNamedWithTheRow() {
        assertThatThrownBy(() -> CurveChoice.of(ChannelChoiceTest.row("Vf", ""), curve("Voltage V", "Current A")))
                .isInstanceOf(InputException.class)
                .hasMessage(
                        "captures.csv, line 7, input: a.csv has no channel 'Vf'. Its channels are Voltage, Current; a"
                                + " number from 1 to 2 serves too");
    }

    @Test
    void withoutACurrentThereIsNoCurve() {
        assertThatThrownBy(() -> CurveChoice.of(curve("V1 V", "V2 V")))
                .isInstanceOf(InputException.class)
                .hasMessage(
                        "a.csv: a traced device needs a column of voltage and one of current, but the columns are V1, V2."
                                + " Export both, with their units in the heading");
    }

    /** Columns by name, V or A behind it. */
    private static Export curve(String... headings) {
        List<Channel> channels = new ArrayList<>();
        for (String heading : headings) {
            Optional<Unit> unit = heading.endsWith(" V")
                    ? Optional.of(Unit.VOLT)
                    : heading.endsWith(" A") ? Optional.of(Unit.AMPERE) : Optional.empty();
            String name = unit.isPresent() ? heading.substring(0, heading.length() - 2) : heading;
            channels.add(new Channel(name, channels.size() + 1, unit, Samples.of(0, 1), Optional.empty()));
        }
        return new CurveTable("a.csv", channels, List.of(), List.of());
    }
}
