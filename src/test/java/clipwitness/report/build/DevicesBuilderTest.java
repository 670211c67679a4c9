package clipwitness.report.build;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.result.TracedDevice;
import clipwitness.fixture.ExampleDevices;
import clipwitness.report.model.DevicesPart;
import clipwitness.report.model.Row;
import clipwitness.report.model.Table;
import java.util.List;
import org.junit.jupiter.api.Test;

class DevicesBuilderTest {
    private static final List<TracedDevice> TRACED = List.of(
            ExampleDevices.diode("D1", 4e-3, 23),
            ExampleDevices.diode("D2", 2e-4, 28),
            ExampleDevices.diode("D3", 0, 23),
            ExampleDevices.resistor("R1"));
    private static final DevicesPart PART =
            new DevicesBuilder(ExampleDevices.wording()).of(ExampleDevices.of(TRACED, List.of()));

    private static Row row(Table table, String name) {
        return table.rows().stream()
                .filter(r -> ExampleDevices.plain(r.name()).equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Sweeps 4 mV, 200 µV and nothing apart: in one row all are printed in the unit of the largest. */
    @Test
    void aRowOfMicrovoltsAndMillivoltsIsPrintedInOneUnit() {
        Row gap = row(PART.figures().get(0), "Gap of the sweeps up and down");
        assertThat(gap.unit()).isEqualTo("mV");
        assertThat(Double.parseDouble(gap.cells().get(0).text())).isBetween(3.99, 4.01);
        assertThat(Double.parseDouble(gap.cells().get(1).text())).isBetween(0.199, 0.201);
        assertThat(gap.cells().get(2).text()).isEqualTo("0"); // equal to the last digit
    }

    /** n Vt = 45 mV at 23 °C (Vt = 25.5202 mV): n = 1.763. */
    @Test
    void figuresOfADeviceStandUnderItsName() {
        Table table = PART.figures().get(0);
        assertThat(table.columns()).containsExactly("D1", "D2", "D3", "R1");
        assertThat(row(table, "Ideality n").cells().get(2).text()).startsWith("1.763");
        assertThat(row(table, "Forward voltage at 1 mA").unit()).isEqualTo("mV");
    }

    @Test
    void aDashHasItsReasonUnderTheTable() {
        Table table = PART.figures().get(0);
        assertThat(row(table, "Ideality n").cells().get(3).text()).isEqualTo("–¹");
        assertThat(table.notes())
                .map(ExampleDevices::plain)
                .containsExactly("¹ the current is proportional to the voltage: a resistor of 470 Ω, no junction");
    }

    @Test
    void pairsTracedApartHaveALineThatSaysSo() {
        Table pairs = PART.pairs().get(0);
        assertThat(pairs.rows()).hasSize(1);
        assertThat(pairs.title()).isEqualTo("Best pairs among the traced devices");
        Table apart = new DevicesBuilder(ExampleDevices.wording())
                .of(ExampleDevices.of(TRACED.subList(0, 2), List.of()))
                .pairs()
                .get(0);
        assertThat(ExampleDevices.plain(apart.rows().get(0).note()))
                .isEqualTo(
                        "traced 5.0 K apart: referred to one temperature with −1.8 mV a kelvin, which adds ± 1.5 mV of uncertainty to the mismatch");
    }
}
