package clipwitness.batch;

import clipwitness.batch.load.Loading;
import clipwitness.bench.circuit.CircuitJob;
import clipwitness.bench.circuit.Truth;
import clipwitness.compare.Examination;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Hint;
import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.fixture.Said;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.reading.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;

/**
 * What the program says about an invented circuit, beside what is true.
 *
 * @param job     the circuit
 * @param results what was measured and decided
 */
record CircuitOutcome(CircuitJob job, JobResults results) {
    /** Captures the circuit into a folder, where it is not there yet, and examines it as a report does. */
    static CircuitOutcome of(CircuitJob circuit, Path folder) throws IOException, InputException {
        if (Files.notExists(folder)) {
            circuit.folder().writeTo(folder);
        }
        ExecutorService worker = Executors.newSingleThreadExecutor();
        try {
            Job job = JobReader.read(folder);
            return new CircuitOutcome(
                    circuit, Examination.of(job, "0".repeat(64), Loading.all(job, worker, Progress.NONE)));
        } finally {
            worker.shutdownNow();
        }
    }

    /** What is wrong with it, empty when nothing is: false hints, a fault that was missed, a wrong half, a wrong verdict. */
    List<String> misses() {
        Truth truth = job.truth();
        List<String> misses = new ArrayList<>();
        results.hints().stream().filter(h -> !isTrue(h)).forEach(h -> misses.add("false " + name(h)));
        if (!truth.wanted().isEmpty() && results.hints().stream().noneMatch(this::namesTheFault)) {
            misses.add("missed " + truth.wanted());
        }
        truth.half()
                .ifPresent(half -> results.hints().stream()
                        .filter(h -> Said.hint(h).contains(half.equals("upper") ? "lower half" : "upper half"))
                        .forEach(h -> misses.add("wrong half in " + name(h))));
        verdict().filter(v -> truth.healthy() && v == Decision.FAIL).ifPresent(v -> misses.add("failed"));
        verdict().filter(v -> isJudged() && v == Decision.PASS).ifPresent(v -> misses.add("passed"));
        return misses;
    }

    /** Whether a verdict is about the fault: hum in a wave is described, because its limit needs a capture of noise. */
    private boolean isJudged() {
        return job.truth().state().equals(Optional.of("original"))
                && !job.truth().wanted().contains("extra-hum");
    }

    private boolean isTrue(Hint hint) {
        return namesTheFault(hint) || job.truth().allowed().contains(hint.code().code());
    }

    private boolean namesTheFault(Hint hint) {
        return job.truth().wanted().contains(hint.code().code())
                && hint.state().equals(job.truth().state());
    }

    /** Verdict on the state that was to stay what it was. */
    Optional<Decision> verdict() {
        return results.comparisons().stream()
                .filter(c -> c.to().equals("original"))
                .map(Comparison::verdict)
                .findFirst();
    }

    /** A row of the table: circuit, truth, verdict, hints, misses. */
    String row() {
        Truth truth = job.truth();
        String fault = truth.healthy()
                ? "nothing"
                : truth.wanted().isEmpty()
                        ? "a change"
                        : truth.wanted().stream().sorted().collect(Collectors.joining("/"));
        return "%-44s | %-44s | %-10s | %-60s | %s"
                .formatted(
                        job.name(),
                        fault + truth.half().map(h -> " (" + h + ")").orElse(""),
                        verdict().map(Enum::name).orElse("-"),
                        results.hints().stream().map(CircuitOutcome::name).collect(Collectors.joining(", ")),
                        String.join("; ", misses()));
    }

    private static String name(Hint hint) {
        return hint.state().orElse("job") + ":" + hint.code().code();
    }
}
