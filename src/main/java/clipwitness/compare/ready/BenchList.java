package clipwitness.compare.ready;

import clipwitness.capture.Doubt;
import clipwitness.capture.DoubtCode;
import clipwitness.capture.Severity;
import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Missing;
import clipwitness.job.CaptureKind;
import clipwitness.job.Instrument;
import clipwitness.job.Job;
import clipwitness.job.LimitQuantity;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is missing before the unit is opened, most important first: a list to work through at the bench. */
final class BenchList {
    private static final double PERIODS_FOR_HUM = 5;
    private static final double USUAL_MAINS = 50; // Hz; the longer period of the two that are in use
    private static final int USUAL_BITS = 8;
    private static final double HALF = 0.5;

    private final Job job;
    private final Catalogue catalogue;
    private final List<CaptureResult> captures;
    private final List<Missing> missing = new ArrayList<>();

    BenchList(Job job, Catalogue catalogue, List<CaptureResult> captures) {
        this.job = job;
        this.catalogue = catalogue;
        this.captures = captures;
    }

    List<Missing> all() {
        List<State> before = job.sheet().states(Role.BEFORE);
        before.forEach(this::waves);
        doubts(Severity.REFUSAL);
        before.forEach(this::settings);
        before.forEach(this::kinds);
        doubts(Severity.WARNING);
        captures.forEach(this::screen);
        rails(before);
        return missing;
    }

    private void add(String code, String text) {
        missing.add(new Missing(code, text, false));
    }

    private void addGrave(String code, String text) {
        missing.add(new Missing(code, text, true));
    }

    private void waves(State state) {
        if (catalogue.of(state.name()).isEmpty()) {
            addGrave(
                    "no-waveform",
                    "“" + state.label()
                            + "” has no waveform capture: capture the test tone at several positions of the gain"
                            + " control, input and output together.");
        }
    }

    /** Doubts of one severity, each capture by itself. */
    private void doubts(Severity severity) {
        for (CaptureResult c : captures) {
            for (Doubt d : c.doubts()) {
                if (d.severity() == severity && d.code() != DoubtCode.UNIT_ASSUMED) {
                    missing.add(new Missing(
                            d.code().code(), c.row().file() + ": " + d.sentence(), severity == Severity.REFUSAL));
                }
            }
        }
    }

    private void settings(State state) {
        List<StateAtCondition> settings = catalogue.of(state.name());
        if (settings.isEmpty()) {
            return;
        }
        String label = "“" + state.label() + "”";
        if (settings.stream().noneMatch(s -> catalogue.alongGain(s).size() > 1)) {
            add(
                    "one-gain-setting",
                    label
                            + " was captured at one position of the gain control: capture more, the end stops among them, where no"
                            + " knob can be set amiss.");
        }
        if (settings.stream().noneMatch(s -> s.runs() > 1)) {
            add(
                    "no-replicate",
                    label
                            + " has no setting that was set anew and captured again (column run): without one, how well the knob is"
                            + " set again is taken from the sheet.");
        }
        if (settings.stream().noneMatch(s -> s.first().values().containsKey(WaveformQuantity.GAIN))) {
            add(
                    "no-input-channel",
                    label + " was captured without its input: gain, polarity, onset and knee stay unknown.");
        }
    }

    private void kinds(State state) {
        List<CaptureResult> noise = of(state, CaptureKind.NOISE);
        if (noise.isEmpty()) {
            absent(
                    "no-noise-capture",
                    state,
                    "noise capture: terminate the input and capture the output for at least 5 periods of the mains, or noise and"
                            + " hum cannot be compared",
                    LimitQuantity.NOISE,
                    LimitQuantity.HUM);
        }
        noise.forEach(this::length);
        if (of(state, CaptureKind.RESPONSE).isEmpty()) {
            absent(
                    "no-response-capture",
                    state,
                    "response capture: without one the frequency response cannot be compared",
                    LimitQuantity.RESPONSE);
        }
    }

    private List<CaptureResult> of(State state, CaptureKind kind) {
        return captures.stream()
                .filter(c -> c.row().kind() == kind && c.row().state().equals(Optional.of(state.name())))
                .toList();
    }

    /** A kind of capture that is not there, grave where the sheet itself sets a limit that needs it. */
    private void absent(String code, State state, String what, LimitQuantity... needing) {
        boolean wanted =
                List.of(needing).stream().anyMatch(q -> !job.sheet().limits().isDefault(q));
        missing.add(new Missing(code, "“" + state.label() + "” has no " + what + ".", wanted));
    }

    private void length(CaptureResult noise) {
        OptionalDouble rate = noise.export().sampleRate();
        double mains = job.sheet().bench().mains().orElse(USUAL_MAINS);
        if (rate.isPresent() && noise.export().samples() / rate.getAsDouble() * mains < PERIODS_FOR_HUM) {
            add(
                    DoubtCode.TOO_SHORT_FOR_HUM.code(),
                    String.format(
                            Locale.ROOT,
                            "%s: the record lasts %.0f ms, and 5 periods of %.0f Hz last %.0f ms: capture a longer one.",
                            noise.row().file(),
                            1000 * noise.export().samples() / rate.getAsDouble(),
                            mains,
                            1000 * PERIODS_FOR_HUM / mains));
        }
    }

    /** A wave that leaves more than half of the converter's codes unused. */
    private void screen(CaptureResult capture) {
        Optional<WaveformResult> wave = capture.waveform();
        OptionalDouble step = wave.map(w -> w.range().codeStep()).orElse(OptionalDouble.empty());
        if (step.isEmpty()) {
            return;
        }
        double span = peak(wave.get(), WaveformQuantity.PEAK_UP) + peak(wave.get(), WaveformQuantity.PEAK_DOWN);
        double used = span / step.getAsDouble() / Math.pow(2, bits(capture));
        if (span > 0 && used < HALF) {
            add(
                    "screen-half-empty",
                    String.format(
                            Locale.ROOT,
                            "%s: the wave fills %.0f %% of the converter's range: a finer vertical range would halve its steps.",
                            capture.row().file(),
                            100 * used));
        }
    }

    private static double peak(WaveformResult wave, WaveformQuantity quantity) {
        return wave.get(quantity).asValue().map(Measured.Value::number).orElse(0.0);
    }

    private int bits(CaptureResult capture) {
        return job.sheet().bench().instruments().stream()
                .filter(i -> capture.row().instrument().isEmpty()
                        || capture.row().instrument().equals(Optional.of(i.name())))
                .map(Instrument::bits)
                .filter(b -> b.isPresent())
                .mapToInt(b -> b.getAsInt())
                .findFirst()
                .orElse(USUAL_BITS);
    }

    private void rails(List<State> before) {
        job.sheet().rails().stream()
                .filter(r -> before.stream().noneMatch(s -> r.readings().containsKey(s.name())))
                .forEach(r -> add(
                        "no-reading", "“" + r.name() + "” has no meter reading from before the work: measure it now."));
    }
}
