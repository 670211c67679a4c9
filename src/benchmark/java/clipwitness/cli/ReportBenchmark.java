package clipwitness.cli;

import java.io.PrintWriter;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** The report of the sample job with a switch, again and again in one process with the launcher's options: time, and processor time of all threads. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
        value = 1,
        jvmArgs = {"-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-XX:MetaspaceSize=96m"})
@Warmup(iterations = 20)
@Measurement(iterations = 20)
public class ReportBenchmark {
    private static final String JOB = "sample-captures/bass-drive-switch";

    /** Processor time of a run. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Processor {
        /** Milliseconds of all threads, the compiler's and the collector's included. */
        public long processorMilliseconds;

        private long before;

        /** Begins to count. */
        @Setup(Level.Invocation)
        public void begin() {
            before = now();
        }

        /** Ends. */
        @TearDown(Level.Invocation)
        public void end() {
            processorMilliseconds = TimeUnit.NANOSECONDS.toMillis(now() - before);
        }

        private static long now() {
            return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                    .getProcessCpuTime();
        }
    }

    /** One report. */
    @Benchmark
    public int report(Processor processor) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        Path out = Path.of("target", "benchmark", "report");
        return new Clipwitness(nowhere, nowhere).run("report", JOB, "--out", out.toString());
    }
}
