package clipwitness.compare.judge;

import clipwitness.compare.result.CaptureResult;
import clipwitness.job.Job;
import clipwitness.job.State;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Doubts that only show when captures stand side by side: another stimulus, one export for two states. */
public final class PairDoubts {
    private static final Doubt ONCE = Doubt.of(Severity.NOTE, DoubtReason.NOT_COMPARABLE_SET_ONCE);

    private final Job job;
    private final Catalogue catalogue;
    private final Repeatability repeatability;
    private final Drift drift;

    public PairDoubts(Job job, Catalogue catalogue, Repeatability repeatability) {
        this.job = job;
        this.catalogue = catalogue;
        this.repeatability = repeatability;
        this.drift = Drift.of(job.sheet());
    }

    /** The captures with these doubts added. */
    public List<CaptureResult> added(List<CaptureResult> captures) {
        return captures.stream().map(c -> added(c, captures)).toList();
    }

    private CaptureResult added(CaptureResult capture, List<CaptureResult> all) {
        List<Doubt> doubts = new ArrayList<>(capture.doubts());
        StimulusChange.fromSheet(capture).ifPresent(doubts::add);
        compared(capture).forEach(doubts::add);
        sameExport(capture, all).ifPresent(doubts::add);
        return doubts.size() == capture.doubts().size() ? capture : capture.withDoubts(doubts);
    }

    private Stream<Doubt> compared(CaptureResult capture) {
        Optional<State> state = capture.row().state().map(job.sheet()::state);
        if (state.isEmpty() || capture.waveform().isEmpty()) {
            return Stream.empty();
        }
        Optional<StateAtCondition> to =
                catalogue.at(state.get().name(), capture.row().condition());
        return Stream.concat(state.get().against().stream(), state.get().alsoAgainst().stream())
                .flatMap(from -> catalogue.at(from, capture.row().condition()).stream())
                .flatMap(from -> doubts(from, to.orElseThrow()));
    }

    private Stream<Doubt> doubts(StateAtCondition from, StateAtCondition to) {
        Stream<Doubt> ofDrift = drift.doubts(from, to).stream();
        return repeatability.isUnknown(from) || repeatability.isUnknown(to)
                ? Stream.concat(ofDrift, Stream.of(ONCE))
                : ofDrift;
    }

    private Optional<Doubt> sameExport(CaptureResult capture, List<CaptureResult> all) {
        return all.stream()
                .filter(other -> !other.row().equals(capture.row()) && other.isOfSameExport(capture))
                .findFirst()
                .map(other -> new Doubt(Severity.WARNING, role(capture, other)));
    }

    private Reason role(CaptureResult capture, CaptureResult other) {
        Argument line = Argument.place(other.row().row());
        if (!other.row().state().equals(capture.row().state())) {
            String label = other.row().state().map(job.sheet()::called).orElse("");
            return Reason.of(DoubtReason.NOT_COMPARABLE_TWO_STATES, Argument.name(label), line);
        }
        return other.row().condition().equals(capture.row().condition())
                ? Reason.of(DoubtReason.NOT_COMPARABLE_TWO_ROWS, line)
                : Reason.of(DoubtReason.NOT_COMPARABLE_TWO_SETTINGS, line);
    }
}
