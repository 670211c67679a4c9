package clipwitness.bench.circuit;

import clipwitness.bench.Cycle;
import clipwitness.bench.ExportText;
import clipwitness.bench.JobFiles;
import clipwitness.bench.Probe;
import clipwitness.bench.Recording;
import clipwitness.bench.Scope;
import clipwitness.bench.Tracer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/**
 * The captures of a job, by an oscilloscope of 8 bits whose ranges are off by up to 3 %, each by its own share, with a knob that is set by eye.
 *
 * @param job    the job
 * @param folder where they go
 */
record Captures(CircuitJob job, JobFiles folder) {
    /** Vertical accuracy that the job sheet takes by default. */
    private static final double RANGE_ERROR = 0.03;

    /** Standard deviation of the knob, of full rotation, as the sheet states it. */
    private static final double KNOB = 0.004;

    private static final Scope SCOPE = new Scope(4_000, 15e-6, 0.6);

    void take() {
        for (Shown state : job.states()) {
            List<Integer> gains = job.occasion().gains();
            for (int gain : gains) {
                for (int run = 1; run <= job.occasion().runs(); run++) {
                    wave(state, gain, run);
                }
            }
        }
        if (job.occasion().traced()) {
            Tracer tracer = new Tracer(folder, ExportText::unitsInHeadings);
            job.states().stream()
                    .flatMap(s -> Device.names(s.listed()))
                    .distinct()
                    .forEach(name -> tracer.trace(name, Device.named(name)));
        }
    }

    private void wave(Shown state, int gain, int run) {
        String file = "captures/%s-%03d%s.csv".formatted(state.name(), gain, run == 1 ? "" : "-run" + run);
        Map<String, String> row = new HashMap<>(Map.of("file", file, "state", state.name(), "kind", "waveform"));
        row.put("gain", String.valueOf(gain));
        row.put("run", String.valueOf(run));
        folder.add(row, ExportText.preamble(recording(state, gain, new Random(seed(file)))));
    }

    private long seed(String text) {
        return (job.name() + text).hashCode();
    }

    private Recording recording(Shown state, int gain, Random random) {
        double frequency = job.occasion().frequency();
        Cycle input = Cycle.sine(frequency, CircuitJob.AMPLITUDE);
        boolean stop = gain == 0 || gain == 100;
        double knob = stop ? 0 : KNOB * random.nextGaussian() + state.knobOffset();
        Cycle output = state.pedal().outputFor(input, gain / 100.0 + knob);
        List<Probe> probes = new ArrayList<>();
        if (job.occasion().input()) {
            probes.add(asSeen(Probe.on("CH1", input, input)));
        }
        double phase = 2 * Math.PI * random.nextDouble();
        double hum = state.pedal().hum();
        double mains = 2 * Math.PI * job.occasion().mains();
        Cycle expected = output.map(v -> v + Math.copySign(hum, v));
        Probe clean = Probe.on("CH2", output, expected);
        probes.add(asSeen(new Probe(
                "CH2", time -> output.at(time) + hum * Math.sin(mains * time + phase), clean.perDivision())));
        return SCOPE.record(random, SCOPE.intervalFor(frequency), probes);
    }

    /** The volts as a range of a channel shows them. */
    private Probe asSeen(Probe probe) {
        Random range = new Random(seed(probe.name() + probe.perDivision()));
        range.nextDouble();
        double factor = 1 + RANGE_ERROR * (2 * range.nextDouble() - 1);
        DoubleUnaryOperator volts = probe.voltage();
        return new Probe(probe.name(), time -> factor * volts.applyAsDouble(time), probe.perDivision());
    }
}
