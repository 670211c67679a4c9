package clipwitness.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.quantity.ColumnUnits.Prefixed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Units that a user states for the columns of an export. */
class ColumnUnitsTest {
    @ParameterizedTest
    @ValueSource(strings = {"mV,mA", "mV, mA", "mV;mA", "mV mA", " mV / mA "})
    void oneAColumnStandsBetweenAnyMarks(String text) {
        assertThat(ColumnUnits.parse(text).orElseThrow().units())
                .containsExactly(new Prefixed(Unit.VOLT, -3), new Prefixed(Unit.AMPERE, -3));
    }

    @Test
    void secondsStandAmongSeveralOnly() {
        assertThat(ColumnUnits.parse("µs,V").orElseThrow().first()).isEqualTo(new Prefixed(Unit.SECOND, -6));
        assertThat(ColumnUnits.parse("s")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "W", "v", "V,", "V,,A", "V,Hz", "5 V"})
    void anythingElseIsNone(String text) {
        assertThat(ColumnUnits.parse(text)).isEmpty();
    }

    @Test
    void aScaleGoesWithOneUnitWithoutPrefix() {
        assertThat(ColumnUnits.of(Unit.VOLT).takesScale()).isTrue();
        assertThat(ColumnUnits.parse("mV").orElseThrow().takesScale()).isFalse();
        assertThat(ColumnUnits.parse("V,A").orElseThrow().takesScale()).isFalse();
    }
}
