package clipwitness.bench;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Samples;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExportTextTest {
    private static final Recording RECORDING = new Recording(
            -5e-6,
            5e-6,
            List.of(
                    new Column("in", "V", 4, Samples.of(0.05, -0.05)),
                    new Column("out", "V", 4, Samples.of(-1.5, 1.25))));

    @Test
    void headingsCarryTheUnit() {
        assertThat(ExportText.unitsInHeadings(RECORDING.behind(RECORDING.time())))
                .isEqualTo("time (s),in (V),out (V)\n-0.000005,0.0500,-1.5000\n0.000000,-0.0500,1.2500\n");
    }

    @Test
    void unitsStandInARowOfTheirOwn() {
        assertThat(ExportText.unitsRow(RECORDING.channels()))
                .isEqualTo("in,out\nV,V\n0.0500,-1.5000\n-0.0500,1.2500\n");
    }

    @Test
    void semicolonsGoWithDecimalCommas() {
        assertThat(ExportText.decimalComma(RECORDING.behind(RECORDING.time().in("ms", 1e3, 3))))
                .isEqualTo("time [ms];in [V];out [V]\r\n-0,005;0,0500;-1,5000\r\n0,000;-0,0500;1,2500\r\n");
    }

    @Test
    void aPreambleStandsInForTheTimes() {
        assertThat(ExportText.preamble(RECORDING)).isEqualTo("""
                        samples,2
                        sample interval (s),0.000005
                        first sample (s),-0.000005
                        unit,V,V

                        in,out
                        0.0500,-1.5000
                        -0.0500,1.2500
                        """);
    }

    @Test
    void aCommentStandsInForTheTimes() {
        assertThat(ExportText.rateInComment(RECORDING))
                .isEqualTo("# sample rate: 200000 Hz\nin (V),out (V)\n0.0500,-1.5000\n-0.0500,1.2500\n");
    }
}
