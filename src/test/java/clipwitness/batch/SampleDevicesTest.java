package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.batch.load.Loading;
import clipwitness.compare.Examination;
import clipwitness.compare.result.Devices;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.compare.result.TracedDevice;
import clipwitness.fault.InputException;
import clipwitness.fixture.Said;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.junction.JunctionFit;
import clipwitness.reading.Progress;
import clipwitness.reason.HintCode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sample jobs' devices: traced and captured by a bench in software that is written apart from the program. */
class SampleDevicesTest {
    private static final Map<String, JobResults> RESULTS = new ConcurrentHashMap<>();

    private static JobResults results(String name) {
        return RESULTS.computeIfAbsent(name, SampleDevicesTest::examined);
    }

    private static JobResults examined(String name) {
        ExecutorService worker = Executors.newSingleThreadExecutor();
        try {
            Job job = JobReader.read(Path.of("sample-captures", name));
            return Examination.of(job, "0".repeat(64), Loading.all(job, worker, Progress.NONE));
        } catch (InputException e) {
            throw new IllegalStateException(e);
        } finally {
            worker.shutdownNow();
        }
    }

    /** Parameters of the bench's D1 to D4, k = 3. */
    @ParameterizedTest
    @CsvSource({"D1, 2.5e-9, 1.75, 0.6", "D2, 2.7e-9, 1.76, 0.6", "D3, 2.3e-9, 1.74, 0.7", "D4, 3.6e-9, 1.79, 0.5"})
    void fitsHoldTheParametersOfTheBench(String device, double saturation, double ideality, double series) {
        JunctionFit fit = results("bass-drive-switch").devices().traced().stream()
                .filter(d -> d.name().equals(device))
                .map(TracedDevice::result)
                .findFirst()
                .orElseThrow()
                .fit()
                .orElseThrow();
        Map<String, Double> truth =
                Map.of("saturationCurrent", saturation, "ideality", ideality, "seriesResistance", series);
        truth.forEach((name, value) -> {
            double u = fit.figures().get(name).expandedUncertainty().orElseThrow();
            assertThat(fit.figures().get(name).value().orElseThrow()).as(name).isCloseTo(value, within(1.5 * u));
        });
    }

    @Test
    void tracedDevicesPredictClipLevelsAndPeaksAtEverySetting() {
        List<StatePrediction> predictions =
                results("bass-drive-switch").devices().predictions();
        assertThat(predictions).hasSize(15);
        for (StatePrediction p : predictions) {
            for (String quantity : List.of("clipUp", "clipDown", "peakUp", "peakDown", "rms")) {
                Prediction figure = p.figure(quantity).orElseThrow();
                double u = figure.expandedUncertainty().orElseThrow();
                assertThat(figure.difference().orElseThrow())
                        .as(p.state() + " " + p.condition() + " " + figure)
                        .isBetween(-u, u);
                assertThat(u / figure.measured().value().orElseThrow())
                        .as(p.state() + " " + p.condition() + " " + figure)
                        .isLessThan(0.15);
            }
        }
        assertThat(Said.remark(predictions.get(0).source())).contains("source from the gain for small signals");
    }

    /** An open leg is one cause: that the devices do not explain its wave either is no second hint, but the prediction shows it. */
    @Test
    void aHealthyJobHasNoHintAndAnOpenLegHasOneThatNamesItsHalf() {
        assertThat(results("bass-drive-switch").hints()).isEmpty();
        assertThat(results("lifted-joint").hints())
                .filteredOn(h -> h.states().contains("original"))
                .singleElement()
                .satisfies(h -> {
                    assertThat(h.code()).isEqualTo(HintCode.ONE_SIDE_NOT_CLIPPING);
                    assertThat(Said.hint(h)).contains("the upper half of the wave does not clip where the other does");
                });
        assertThat(results("lifted-joint").devices().predictions())
                .filteredOn(p -> p.state().equals("original"))
                .isNotEmpty()
                .anyMatch(p -> p.figure(WaveformQuantity.CLIP_UP.key())
                        .flatMap(Prediction::agrees)
                        .equals(Optional.of(false)));
    }

    @Test
    void fittedPairsAndBestPairsAreNamed() {
        Devices devices = results("bass-drive-switch").devices();
        assertThat(devices.fitted()).containsOnlyKeys("received", "original"); // the new pair is one against two
        assertThat(devices.combined()).containsOnlyKeys("received", "original", "new");
        assertThat(devices.pairing().left()).isEmpty();
        assertThat(devices.pairing().pairs().get(0).devices()).containsExactly("D1", "D3");
    }
}
