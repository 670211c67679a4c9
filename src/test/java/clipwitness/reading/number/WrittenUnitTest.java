package clipwitness.reading.number;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Units as the SI Brochure writes them, and as exports do. */
class WrittenUnitTest {
    @ParameterizedTest
    @CsvSource({
        "V,V",
        "mV,mV",
        "(mV),mV",
        "[ms],ms",
        "volt,V",
        "Volts,V",
        "VOLT,V",
        "mVolt,mV",
        "millivolt,mV",
        "Volt DC,V",
        "VDC,V",
        "µs,µs",
        "μs,µs",
        "us,µs",
        "Âµs,µs",
        "æs,µs",
        "ns,ns",
        "S,s",
        "mS,ms",
        "MS,ms",
        "Second,s",
        "sec,s",
        "A,A",
        "Amp DC,A",
        "uA,µA",
        "nA,nA",
        "pA,pA",
        "mA,mA",
        "kHz,kHz",
        "MHz,MHz",
        "MS/s,MHz",
        "GSa/s,GHz",
        "kS/s,kHz",
        "Ω,Ω",
        "kOhm,kΩ",
        "°C,°C"
    })
    void aUnitIsRead(String text, String symbol) {
        assertThat(WrittenUnit.parse(text)).map(WrittenUnit::symbol).contains(symbol);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "MV", "CH1", "I", "x", "Time", "counts", "Vs", "()", "V)", "mm"})
    void whatIsNoUnitIsNone(String text) {
        assertThat(WrittenUnit.parse(text)).isEmpty();
    }
}
