package clipwitness.compare.judge;

import clipwitness.capture.Doubt;
import clipwitness.capture.DoubtCode;
import clipwitness.capture.Severity;
import clipwitness.compare.result.CaptureResult;
import clipwitness.job.Job;
import clipwitness.job.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Doubts that only show when captures stand side by side: another stimulus, one export for two states. */
public final class PairDoubts {
    private static final Doubt ONCE = new Doubt(
            DoubtCode.NOT_COMPARABLE,
            Severity.NOTE,
            "the gain control was set once and at one position only, so how well it is set again is not in the uncertainty: a second"
                    + " setting, or a second run, would tell");

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
                .map(other -> new Doubt(
                        DoubtCode.NOT_COMPARABLE,
                        Severity.WARNING,
                        "the same export, byte for byte, " + role(capture, other)));
    }

    private String role(CaptureResult capture, CaptureResult other) {
        String line = "line " + other.row().row() + " of the captures table";
        if (!other.row().state().equals(capture.row().state())) {
            String label = other.row().state().map(job.sheet()::label).orElse("");
            return "stands for “" + label + "” too (" + line + "): what it says of itself is not compared";
        }
        return other.row().condition().equals(capture.row().condition())
                ? "stands in " + line + " too: it is counted once"
                : "stands for another setting too (" + line + "): one of them is wrong";
    }
}
