package clipwitness.compare.plan;

import clipwitness.capture.Condition;
import clipwitness.capture.Samples;
import clipwitness.capture.VerticalRange;
import clipwitness.capture.Waveform;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.ExportFacts;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.job.JobSheet;
import clipwitness.measure.VerticalAccuracy;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.measure.noise.NoiseInput;
import clipwitness.measure.noise.NoiseMeasurement;
import clipwitness.measure.noise.NoiseResult;
import clipwitness.measure.response.ResponseMeasurement;
import clipwitness.measure.response.ResponseResult;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/**
 * A unit to plan with, and the instrument that captures it: a soft limiter of 1 V ({@code tanh}) behind a linear gain control that drives it from once to
 * thirty times its limit, with noise of a thousandth of the limit; a converter that dithers itself with half a code of noise, 25 codes a division at 8 bits.
 * Real units differ: what it says is where to begin, and {@code ready} says what the captures themselves are good for.
 */
final class ModelUnit {
    /** Name of the one state. */
    static final String STATE = "before";

    private static final double LEAST_DRIVE = 1;
    private static final double MOST_DRIVE = 30;
    private static final double UNIT_NOISE = 1e-3;
    private static final double CODE_NOISE = 0.5;
    private static final int CODES_PER_DIVISION = 25;
    private static final int DIVISIONS = 8;
    private static final int BITS = 8;
    private static final double LOWEST = 20;
    private static final double HIGHEST = 20_000;
    private static final double FLOOR = 1e-3;
    private static final double HUM = 3e-4;

    private final JobSheet sheet;
    private final double codes;

    /** A unit on the bench of a sheet. */
    ModelUnit(JobSheet sheet) {
        this.sheet = sheet;
        OptionalInt bits = sheet.bench().instruments().stream()
                .flatMapToInt(i -> i.bits().stream())
                .min();
        this.codes = DIVISIONS * CODES_PER_DIVISION * Math.pow(2, bits.orElse(BITS) - BITS);
    }

    /**
     * A capture of a wave.
     *
     * @param gain   position of the gain control, percent
     * @param off    by how much it is set wrongly, percent
     * @param run    number of the run
     * @param record length and height of the record
     */
    CaptureResult wave(double gain, double off, int run, BenchPlan.WaveRecord record) {
        double frequency = sheet.stimulus().frequency().getAsDouble();
        double rate = frequency * record.samples() / record.periods();
        Random random = new Random(Math.round(1000 * gain) + run);
        double start = random.nextDouble();
        double drive = LEAST_DRIVE + (MOST_DRIVE - LEAST_DRIVE) * (gain + off) / 100;
        DoubleUnaryOperator sine = t -> Math.sin(2 * Math.PI * (frequency * t + start));
        double level = sheet.stimulus().level().getAsDouble();
        Waveform input = seen(t -> level * sine.applyAsDouble(t), level, record, rate, random);
        Waveform output = seen(
                t -> Math.tanh(drive * sine.applyAsDouble(t)) + UNIT_NOISE * random.nextGaussian(),
                Math.tanh(drive),
                record,
                rate,
                random);
        WaveformResult result = VerticalAccuracy.applied(
                WaveformMeasurement.of(WaveformInput.of(output).withInput(input).expecting(frequency)),
                sheet.bench().verticalAccuracy());
        CaptureRow row = row(
                CaptureKind.WAVEFORM,
                OptionalDouble.of(gain),
                run,
                sheet.stimulus().frequency());
        return CaptureResult.unmeasured(row, facts(row, record.samples(), rate), result.doubts())
                .withWaveform(result);
    }

    /** A record without a signal: white noise and hum. */
    CaptureResult noise(double seconds, double rate) {
        double mains = sheet.bench().mains().orElse(50);
        Random random = new Random(1);
        double[] volts = new double[(int) Math.round(seconds * rate)];
        for (int i = 0; i < volts.length; i++) {
            volts[i] = FLOOR * random.nextGaussian() + HUM * Math.sin(2 * Math.PI * mains * i / rate);
        }
        NoiseResult result = NoiseMeasurement.of(new NoiseInput(
                new Waveform(Samples.adopted(volts), rate, Unit.VOLT),
                OptionalDouble.of(mains),
                Optional.empty(),
                sheet.bench().verticalAccuracy()));
        CaptureRow row = row(CaptureKind.NOISE, OptionalDouble.empty(), 1, OptionalDouble.empty());
        return CaptureResult.unmeasured(row, facts(row, volts.length, rate), result.doubts())
                .withNoise(result);
    }

    /** A logarithmic sweep over the audio band, at a level at which nothing clips. */
    CaptureResult sweep(double seconds, double rate) {
        Random random = new Random(2);
        int samples = (int) Math.round(seconds * rate);
        double growth = Math.log(HIGHEST / LOWEST) / seconds;
        double[] in = new double[samples];
        double[] out = new double[samples];
        for (int i = 0; i < samples; i++) {
            double phase = 2 * Math.PI * LOWEST / growth * Math.expm1(growth * i / rate);
            in[i] = Math.sin(phase) + random.nextGaussian() / codes;
            out[i] = Math.sin(phase) + random.nextGaussian() / codes;
        }
        ResponseResult result = ResponseMeasurement.ofSweep(
                WaveformInput.of(new Waveform(Samples.adopted(out), rate, Unit.VOLT))
                        .withInput(new Waveform(Samples.adopted(in), rate, Unit.VOLT)),
                VerticalRange.UNKNOWN);
        CaptureRow row = row(CaptureKind.RESPONSE, OptionalDouble.empty(), 1, OptionalDouble.empty());
        return CaptureResult.unmeasured(row, facts(row, samples, rate), result.doubts())
                .withResponse(result);
    }

    private Waveform seen(
            DoubleUnaryOperator voltage, double peak, BenchPlan.WaveRecord record, double rate, Random random) {
        double step = 2 * peak / (record.screen() * codes);
        double[] volts = new double[record.samples()];
        for (int i = 0; i < volts.length; i++) {
            volts[i] = step * Math.rint(voltage.applyAsDouble(i / rate) / step + CODE_NOISE * random.nextGaussian());
        }
        return new Waveform(Samples.adopted(volts), rate, Unit.VOLT);
    }

    private CaptureRow row(CaptureKind kind, OptionalDouble gain, int run, OptionalDouble frequency) {
        return new CaptureRow(
                1,
                kind.code() + gain + run,
                Optional.of(STATE),
                kind,
                new Condition(
                        gain,
                        frequency,
                        frequency.isPresent() ? sheet.stimulus().level() : OptionalDouble.empty(),
                        Optional.empty()),
                run,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                1,
                1,
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
    }

    private static ExportFacts facts(CaptureRow row, int samples, double rate) {
        return new ExportFacts(
                row.file(),
                Optional.empty(),
                "out",
                Optional.of("in"),
                samples,
                OptionalDouble.of(rate),
                List.of("in", "out"),
                List.of());
    }
}
