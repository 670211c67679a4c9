package clipwitness.signal;

import clipwitness.capture.Samples;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Fits twenty harmonics to a million samples of a clipped sine. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class HarmonicFitBenchmark {
    private static final int SAMPLES = 1_000_000;
    private static final int HARMONICS = 20;
    private static final double PER_SAMPLE = 1 / 1003.7;

    private Samples samples;

    /** Makes the wave. */
    @Setup
    public void make() {
        Random random = new Random(1);
        double[] values = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            values[i] = Math.tanh(3 * Math.sin(2 * Math.PI * PER_SAMPLE * i)) + 0.003 * random.nextGaussian();
        }
        samples = Samples.of(values);
    }

    /** The joint fit from a frequency that is a tenth of a cycle off over the record. */
    @Benchmark
    public JointFit fit() {
        return JointFit.of(List.of(samples), PER_SAMPLE + 0.1 / SAMPLES, HARMONICS);
    }

    /** The fit and the search for its start, where nothing is known of the frequency. */
    @Benchmark
    public JointFit searchAndFit() {
        double start = FundamentalSearch.strongest(samples).orElseThrow();
        return JointFit.of(List.of(samples), start, HARMONICS);
    }
}
