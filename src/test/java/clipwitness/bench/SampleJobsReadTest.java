package clipwitness.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.CurveTable;
import clipwitness.capture.Export;
import clipwitness.capture.TimeRecord;
import clipwitness.capture.Waveform;
import clipwitness.fault.InputException;
import clipwitness.fixture.CurveChannels;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.quantity.Unit;
import clipwitness.reading.ExportReader;
import clipwitness.reading.ReadingOptions;
import clipwitness.reason.DoubtCode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The sample jobs are read without a doubt, and as the generator meant them. */
class SampleJobsReadTest {
    private static final Path SAMPLES = Path.of("sample-captures");

    private static Job job(String name) throws InputException {
        return JobReader.read(SAMPLES.resolve(name));
    }

    private static Export export(Job job, CaptureRow row) throws InputException {
        return ExportReader.read(job.folder().resolve(row.file()), row.file(), ReadingOptions.none());
    }

    /** Every capture of every job. */
    static Stream<String> captures() throws InputException {
        List<String> all = new ArrayList<>();
        for (String name : List.of("bass-drive-switch", "jack-repair", "lifted-joint")) {
            job(name).captures().forEach(row -> all.add(name + "/" + row.file()));
        }
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("captures")
    void everyExportIsReadWithoutDoubt(String capture) throws InputException {
        Export export = ExportReader.read(SAMPLES.resolve(capture), capture, ReadingOptions.none());
        assertThat(export.doubts()).isEmpty();
        if (export instanceof CurveTable curve) {
            assertThat(CurveChannels.in(curve, Unit.VOLT)).isNotNull();
            assertThat(CurveChannels.in(curve, Unit.AMPERE)).isNotNull();
        } else {
            assertThat(export.channels()).allMatch(channel -> channel.unit().equals(Optional.of(Unit.VOLT)));
        }
    }

    /** 3000 samples at 5 µs, as {@link BassDriveSwitch} and the others set their oscilloscope. */
    @ParameterizedTest
    @ValueSource(strings = {"bass-drive-switch", "jack-repair", "lifted-joint"})
    void wavesAreThreeThousandSamplesAtFiveMicroseconds(String name) throws InputException {
        Job job = job(name);
        for (CaptureRow row : job.captures()) {
            if (row.kind() == CaptureKind.WAVEFORM) {
                TimeRecord wave = (TimeRecord) export(job, row);
                assertThat(wave.size()).isEqualTo(3000);
                assertThat(wave.sampleInterval()).isCloseTo(5e-6, within(1e-11));
            }
        }
    }

    /** No wave leaves its screen, is too short, too coarse or off its frequency. */
    @ParameterizedTest
    @ValueSource(strings = {"bass-drive-switch", "jack-repair", "lifted-joint"})
    void wavesAreMeasuredWithoutDoubt(String name) throws InputException {
        Job job = job(name);
        for (CaptureRow row : job.captures()) {
            if (row.kind() == CaptureKind.WAVEFORM || row.kind() == CaptureKind.RESPONSE) {
                TimeRecord wave = (TimeRecord) export(job, row);
                assertThat(WaveformMeasurement.of(WaveformInput.of(channel(wave, 1))
                                        .withInput(channel(wave, 0))
                                        .expecting(row.condition().frequency().orElseThrow()))
                                .doubts())
                        .as(row.file())
                        .filteredOn(d -> d.code() != DoubtCode.STRAIGHTENED) // the stage has filters
                        .isEmpty();
            }
        }
    }

    private static Waveform channel(TimeRecord record, int index) {
        return new Waveform(record.channels().get(index).samples(), record.sampleRate(), Unit.VOLT);
    }

    /** 25,000 samples at 20 µs: 25 periods of the mains. */
    @Test
    void noiseLastsTwentyFivePeriodsOfTheMains() throws InputException {
        Job job = job("jack-repair");
        CaptureRow row = job.captures().stream()
                .filter(r -> r.kind() == CaptureKind.NOISE)
                .findFirst()
                .orElseThrow();
        TimeRecord noise = (TimeRecord) export(job, row);
        assertThat(noise.size() * noise.sampleInterval() * 50).isCloseTo(25, within(1e-9));
    }

    /** The last point of a trace in mV and mA, below the tracer's limit of 12 mA. */
    @Test
    void aTraceInMillivoltsAndMilliamperesIsReadInVoltsAndAmperes() throws InputException {
        CurveTable curve = (CurveTable)
                ExportReader.read(SAMPLES.resolve("bass-drive-switch/tracer/D1.csv"), "D1.csv", ReadingOptions.none());
        assertThat(CurveChannels.in(curve, Unit.VOLT).samples().minimum()).isCloseTo(-1, within(1e-9));
        assertThat(CurveChannels.in(curve, Unit.AMPERE).samples().maximum()).isBetween(0.01, 0.012);
    }

    /** The pair of the new position is one against two. */
    @Test
    void theSheetSaysOneAgainstTwo() throws InputException {
        assertThat(job("bass-drive-switch")
                        .sheet()
                        .clipper()
                        .orElseThrow()
                        .pairs()
                        .get("new"))
                .satisfies(pair -> assertThat(pair.up().devices()).containsExactly("D1"))
                .satisfies(pair -> assertThat(pair.down().devices()).containsExactly("D2", "D3"));
    }
}
