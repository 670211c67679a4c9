package clipwitness.compare.ready;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.FinerRange;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Missing;
import clipwitness.job.CaptureKind;
import clipwitness.job.Instrument;
import clipwitness.job.Job;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.LimitQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.BenchRemark;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Remark;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What is missing before the unit is opened, most important first: a list to work through at the bench. */
final class BenchList {
    private static final double PERIODS_FOR_HUM = 5;
    private static final int MOST_HARMONICS = 20;
    private static final double USUAL_MAINS = 50; // Hz; the longer period of the two that are in use

    /** A file that contradicts itself has to be looked at while the unit is still as it was. */
    private static final Set<DoubtReason> CONTRADICTIONS = EnumSet.of(
            DoubtReason.UNIT_ASSUMED_THOUSANDS,
            DoubtReason.UNIT_ASSUMED_STAMPS,
            DoubtReason.UNIT_ASSUMED_TWICE,
            DoubtReason.UNIT_ASSUMED_TIME_TWICE,
            DoubtReason.UNIT_ASSUMED_ORDER);

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

    private void add(BenchRemark what, Argument... arguments) {
        add(false, what, arguments);
    }

    private void add(boolean grave, BenchRemark what, Argument... arguments) {
        missing.add(new Missing(what.code(), Remark.of(what, arguments), grave));
    }

    private void waves(State state) {
        if (catalogue.of(state.name()).isEmpty()) {
            add(true, BenchRemark.NO_WAVEFORM, Argument.name(state.called()));
        }
    }

    /** Doubts of one severity, one that several captures share with all of them. */
    private void doubts(Severity severity) {
        Map<Doubt, List<String>> files = new LinkedHashMap<>();
        for (CaptureResult c : captures) {
            for (Doubt d : c.doubts()) {
                if (d.severity() == severity && canBeMended(c, d)) {
                    files.computeIfAbsent(d, k -> new ArrayList<>()).add(c.row().file());
                }
            }
        }
        files.forEach((d, of) -> {
            Remark what = Remark.of(
                    BenchRemark.DOUBTED,
                    Argument.names(of.stream().distinct().toList()),
                    Argument.sentence(d.reason()));
            missing.add(new Missing(d.code().code(), what, d.refuses()));
        });
    }

    /** A unit that the file does not state is no fault of the capture, and harmonics beyond all that are counted are the unit's. */
    private static boolean canBeMended(CaptureResult capture, Doubt doubt) {
        boolean isBeyondTheLast = doubt.code() == DoubtCode.UNDERSAMPLED
                && capture.waveform()
                        .filter(w -> w.harmonicCount() >= MOST_HARMONICS)
                        .isPresent();
        boolean isUnstated = doubt.code() == DoubtCode.UNIT_ASSUMED
                && !CONTRADICTIONS.contains(doubt.reason().code());
        return !isUnstated
                && doubt.code() != DoubtCode.TOO_SHORT_FOR_HUM // has a line of its own
                && !isBeyondTheLast;
    }

    private void settings(State state) {
        List<StateAtCondition> settings = catalogue.of(state.name());
        if (settings.isEmpty()) {
            return;
        }
        Argument label = Argument.name(state.called());
        boolean hasControl =
                settings.stream().anyMatch(s -> s.condition().gainPercent().isPresent());
        if (hasControl
                && settings.stream().noneMatch(s -> catalogue.alongGain(s).size() > 1)) {
            add(BenchRemark.ONE_GAIN_SETTING, label);
        }
        if (hasControl && settings.stream().noneMatch(s -> s.runs() > 1)) {
            add(BenchRemark.NO_REPLICATE, label);
        }
        if (settings.stream().noneMatch(s -> s.first().values().containsKey(WaveformQuantity.GAIN))) {
            add(BenchRemark.NO_INPUT_CHANNEL, label);
        }
    }

    private void kinds(State state) {
        List<CaptureResult> noise = of(state, CaptureKind.NOISE);
        if (noise.isEmpty()) {
            absent(BenchRemark.NO_NOISE_CAPTURE, state, LimitQuantity.NOISE, LimitQuantity.HUM);
        }
        noise.forEach(this::length);
        if (of(state, CaptureKind.RESPONSE).isEmpty()) {
            absent(BenchRemark.NO_RESPONSE_CAPTURE, state, LimitQuantity.RESPONSE);
        }
    }

    private List<CaptureResult> of(State state, CaptureKind kind) {
        return captures.stream()
                .filter(c -> c.row().kind() == kind && c.row().state().equals(Optional.of(state.name())))
                .toList();
    }

    /** A kind of capture that is not there, grave where the sheet itself sets a limit that needs it. */
    private void absent(BenchRemark what, State state, LimitQuantity... needing) {
        boolean wanted =
                List.of(needing).stream().anyMatch(q -> !job.sheet().limits().isDefault(q));
        add(wanted, what, Argument.name(state.called()));
    }

    private void length(CaptureResult noise) {
        OptionalDouble rate = noise.export().sampleRate();
        double mains = job.sheet().bench().mains().orElse(USUAL_MAINS);
        if (rate.isPresent() && noise.export().samples() / rate.getAsDouble() * mains < PERIODS_FOR_HUM) {
            add(
                    !job.sheet().limits().isDefault(LimitQuantity.HUM),
                    BenchRemark.TOO_SHORT_FOR_HUM,
                    Argument.name(noise.row().file()),
                    Argument.decimals(1000 * noise.export().samples() / rate.getAsDouble(), Unit.SECOND, 0),
                    Argument.decimals(mains, Unit.HERTZ, 0),
                    Argument.decimals(1000 * PERIODS_FOR_HUM / mains, Unit.SECOND, 0));
        }
    }

    /** A wave that the next finer vertical range would hold too. */
    private void screen(CaptureResult capture) {
        Optional<WaveformResult> wave = capture.waveform();
        if (wave.isEmpty() || !FinerRange.nextHolds(wave.get(), bits(capture))) {
            return;
        }
        FinerRange.used(wave.get(), bits(capture))
                .ifPresent(used -> add(
                        BenchRemark.SCREEN_HALF_EMPTY,
                        Argument.name(capture.row().file()),
                        Argument.decimals(100 * used, Unit.PERCENT, 0)));
    }

    private int bits(CaptureResult capture) {
        return job.sheet().bench().instruments().stream()
                .filter(i -> capture.row().instrument().isEmpty()
                        || capture.row().instrument().equals(Optional.of(i.name())))
                .map(Instrument::bits)
                .filter(b -> b.isPresent())
                .mapToInt(b -> b.getAsInt())
                .findFirst()
                .orElse(FinerRange.USUAL_BITS);
    }

    private void rails(List<State> before) {
        job.sheet().rails().stream()
                .filter(r -> before.stream().noneMatch(s -> r.readings().containsKey(s.name())))
                .forEach(r -> add(BenchRemark.NO_READING, Argument.name(r.name())));
    }
}
