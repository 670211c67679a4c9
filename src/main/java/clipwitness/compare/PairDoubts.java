package clipwitness.compare;

import clipwitness.capture.Doubt;
import clipwitness.capture.DoubtCode;
import clipwitness.capture.Severity;
import clipwitness.job.Job;
import clipwitness.job.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Doubts that only show when captures stand side by side: another stimulus, one export for two states. */
final class PairDoubts {
    private final Job job;
    private final Catalogue catalogue;
    private final Drift drift;

    PairDoubts(Job job, Catalogue catalogue) {
        this.job = job;
        this.catalogue = catalogue;
        this.drift = Drift.of(job.sheet());
    }

    /** The captures with these doubts added. */
    List<CaptureResult> added(List<CaptureResult> captures) {
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
        Optional<Setting> to = catalogue.at(state.get().name(), capture.row().condition());
        return Stream.concat(state.get().against().stream(), state.get().alsoAgainst().stream())
                .flatMap(from -> catalogue.at(from, capture.row().condition()).stream())
                .flatMap(from -> drift.doubts(from, to.orElseThrow()).stream());
    }

    private Optional<Doubt> sameExport(CaptureResult capture, List<CaptureResult> all) {
        return all.stream()
                .filter(other -> other.sha256().equals(capture.sha256())
                        && other.output().equals(capture.output())
                        && !other.row().state().equals(capture.row().state()))
                .findFirst()
                .map(other -> new Doubt(
                        DoubtCode.NOT_COMPARABLE,
                        Severity.WARNING,
                        "the same export, byte for byte, stands for “"
                                + other.row()
                                        .state()
                                        .map(s -> job.sheet().state(s).label())
                                        .orElse("")
                                + "” too (line " + other.row().row() + " of the captures table)"));
    }
}
