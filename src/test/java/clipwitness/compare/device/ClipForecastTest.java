package clipwitness.compare.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Samples;
import clipwitness.compare.result.CaptureResult;
import clipwitness.fault.InputException;
import clipwitness.fixture.Curves;
import clipwitness.fixture.MadeUpCapture;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.junction.CurrentRange;
import clipwitness.measure.junction.JunctionMeasurement;
import clipwitness.measure.junction.JunctionResult;
import clipwitness.measure.junction.Temperature;
import clipwitness.measure.match.MatchedPair;
import clipwitness.measure.match.NamedDevice;
import clipwitness.quantity.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * 100 kΩ ahead of the pair: the source of 100 V drives 1 mA through it whatever the pair, to 1 %, so that a device of twice the voltage clips
 * twice as high.
 */
class ClipForecastTest {
    private static final String SHEET = """
            report: {number: T-1, date: 2026-05-04}
            states:
              before: {label: As it came, role: before}
            clipper: {topology: shunt, source-resistance: 100 kΩ, pairs: {before: [D1, D2]}}
            """;
    private static final List<NamedDevice> DEVICES =
            List.of(device("one", 1), device("another", 1), device("twice", 2), device("twice too", 2));

    @TempDir
    private Path folder;

    private static JunctionResult traced(double factor, double celsius) {
        double[] amperes =
                DoubleStream.iterate(1e-6, i -> i <= 1e-2, i -> i * 1.05).toArray();
        double[] volts = DoubleStream.of(amperes)
                .map(i -> factor * 0.045 * Math.log1p(i / 2.5e-9))
                .toArray();
        return JunctionMeasurement.of(Curves.of(Samples.of(volts), Samples.of(amperes)), new Temperature(celsius, 0));
    }

    private static NamedDevice device(String name, double factor) {
        return new NamedDevice(name, traced(factor, 23));
    }

    private ClipForecast forecast(double celsius) throws IOException, InputException {
        return ClipForecast.of(job(SHEET), List.of(captured("D1", celsius), captured("D2", celsius)))
                .orElseThrow();
    }

    private Job job(String sheet) throws IOException, InputException {
        Files.writeString(folder.resolve("job.yaml"), sheet);
        Files.writeString(folder.resolve("captures.csv"), "file,kind\n");
        return JobReader.read(folder);
    }

    private static CaptureResult captured(String name, double celsius) {
        CaptureResult shell = MadeUpCapture.capture("before").device(name).done();
        return CaptureResult.unmeasured(shell.row(), shell.export(), List.of()).withJunction(traced(1, celsius));
    }

    private static MatchedPair pair(String up, String down) {
        Measured.Value none = Measured.of(0, Unit.VOLT);
        return new MatchedPair(List.of(up, down), none, none, 0, new CurrentRange(1e-6, 1e-3));
    }

    @Test
    void devicesAlikeThoseBeforeClipAsHighAndEvenly() throws IOException, InputException {
        ClipForecast forecast = forecast(23);
        ClipForecast.Forecast same = forecast.of(pair("one", "another"), DEVICES);
        assertThat(same.levelChange().number()).isCloseTo(0, within(1e-9));
        assertThat(same.asymmetry().number()).isCloseTo(0, within(1e-9));
        assertThat(forecast.original()).containsExactly("D1", "D2");
    }

    /** 20 lg 2 = 6.0206 dB. */
    @Test
    void devicesOfTwiceTheVoltageClip6DecibelsHigher() throws IOException, InputException {
        ClipForecast.Forecast twice = forecast(23).of(pair("twice", "twice too"), DEVICES);
        assertThat(twice.levelChange().number()).isCloseTo(6.0206, within(0.01));
        assertThat(twice.asymmetry().number()).isCloseTo(0, within(1e-9));
    }

    /** One against two: (1 - 2) / (1 + 2) = -33.3 %, and 1.5 times as high in the mean, 3.522 dB. */
    @Test
    void oneAgainstTwoIsAThirdUneven() throws IOException, InputException {
        ClipForecast.Forecast uneven = forecast(23).of(pair("one", "twice"), DEVICES);
        assertThat(uneven.asymmetry().number()).isCloseTo(-33.333, within(0.05));
        assertThat(uneven.levelChange().number()).isCloseTo(3.522, within(0.01));
        assertThat(forecast(23).of(pair("twice", "one"), DEVICES).asymmetry().number())
                .isCloseTo(33.333, within(0.05));
    }

    /** Referred to 10 K more at 1.8 mV/K, 0.58 V lose 3.1 %, 0.27 dB, known to 0.3 mV/K / sqrt 3: 0.026 dB. */
    @Test
    void tracesTakenApartPutTheirTemperatureOnTheLevel() throws IOException, InputException {
        Measured.Value change = forecast(33).of(pair("one", "another"), DEVICES).levelChange();
        assertThat(change.largestFirst().get(0).source()).isEqualTo(Source.TEMPERATURE);
        assertThat(change.number()).isCloseTo(-0.27, within(0.02));
        assertThat(change.standardUncertainty()).isCloseTo(0.026, within(0.003));
        assertThat(forecast(23)
                        .of(pair("one", "another"), DEVICES)
                        .levelChange()
                        .standardUncertainty())
                .isLessThan(0.02);
    }

    @Test
    void withoutAClipperOrItsTracedPairNothingIsForecast() throws IOException, InputException {
        assertThat(ClipForecast.of(job(SHEET), List.of(captured("D1", 23)))).isEmpty();
        assertThat(ClipForecast.of(job(SHEET.substring(0, SHEET.indexOf("clipper:"))), List.of(captured("D1", 23))))
                .isEmpty();
    }
}
