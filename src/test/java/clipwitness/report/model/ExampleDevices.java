package clipwitness.report.model;

import clipwitness.capture.Condition;
import clipwitness.capture.Samples;
import clipwitness.compare.result.Devices;
import clipwitness.compare.result.StatePrediction;
import clipwitness.compare.result.TracedDevice;
import clipwitness.fixture.Curves;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.measure.junction.JunctionMeasurement;
import clipwitness.measure.junction.NamedDevice;
import clipwitness.measure.junction.Pairing;
import clipwitness.measure.junction.Temperature;
import clipwitness.report.ExampleJob;
import clipwitness.report.words.JobWording;
import clipwitness.report.words.WordBundle;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Traced devices for the tests of their tables and sentences: exact curves, up and back down. */
public final class ExampleDevices {
    private ExampleDevices() {}

    /** The words of the program about the example job. */
    public static JobWording wording() {
        try {
            WordBundle words = WordBundle.of(Files.readString(Path.of("report-templates/common/words.properties")));
            return new JobWording(words, ExampleJob.good().results());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A silicon-like diode, n Vt = 45 mV, Is = 2.5 nA, whose sweep down lies so many volts below the sweep up; traced at 23 °C. */
    public static TracedDevice diode(String name, double gap, double celsius) {
        return traced(name, i -> 0.045 * Math.log1p(i / 2.5e-9), gap, celsius);
    }

    /** A resistor of 470 Ω. */
    public static TracedDevice resistor(String name) {
        return traced(name, i -> 470 * i, 0, 23);
    }

    private static TracedDevice traced(String name, DoubleUnaryOperator voltage, double gap, double celsius) {
        double[] up = IntStream.range(0, 200)
                .mapToDouble(k -> 1e-6 * Math.pow(1.2e4, k / 199.0))
                .toArray();
        double[] amperes = DoubleStream.concat(
                        DoubleStream.of(up), IntStream.range(0, 200).mapToDouble(k -> up[199 - k]))
                .toArray();
        double[] volts = IntStream.range(0, 400)
                .mapToDouble(k -> voltage.applyAsDouble(amperes[k]) - (k < 200 ? 0 : gap))
                .toArray();
        return new TracedDevice(
                name,
                row(name),
                JunctionMeasurement.of(
                        Curves.of(Samples.of(volts), Samples.of(amperes)), new Temperature(celsius, 0.5)));
    }

    private static CaptureRow row(String device) {
        OptionalDouble none = OptionalDouble.empty();
        return new CaptureRow(
                2,
                "tracer/" + device + ".csv",
                Optional.empty(),
                CaptureKind.JUNCTION,
                new Condition(none, none, none, Optional.empty()),
                1,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                1,
                1,
                none,
                Optional.empty(),
                none,
                Optional.of(device),
                none,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
    }

    public static Devices of(List<TracedDevice> traced, List<StatePrediction> predictions) {
        return new Devices(
                traced,
                Pairing.of(traced.stream()
                        .map(d -> new NamedDevice(d.name(), d.result()))
                        .toList()),
                Map.of(),
                Map.of(),
                predictions);
    }

    public static String plain(String text) {
        return text.replace('\u00A0', ' ');
    }
}
