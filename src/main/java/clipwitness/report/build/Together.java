package clipwitness.report.build;

import clipwitness.compare.result.JobResults;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.List;

/** As what the captures of one setting are taken: those of one run as captures of one wave, runs as settings anew. */
final class Together {
    private final JobWording wording;
    private final JobResults results;

    Together(JobWording wording, JobResults results) {
        this.wording = wording;
        this.results = results;
    }

    /** What is said of a capture and the others of its state and setting; nothing where it is the only one. */
    List<String> of(CaptureRow row) {
        List<Integer> runs = runs(row);
        List<String> said = new ArrayList<>();
        long alike = runs.stream().filter(r -> r == row.run()).count();
        if (alike > 1) {
            said.add(wording.say("capture.replicates", "count", Long.toString(alike)));
        }
        long anew = runs.stream().distinct().count();
        if (anew > 1) {
            said.add(wording.say("capture.runs", "count", Long.toString(anew)));
        }
        return said;
    }

    /** Whether a state was captured at a setting in more than one run. */
    boolean hasRuns(CaptureRow row) {
        return runs(row).stream().distinct().count() > 1;
    }

    private List<Integer> runs(CaptureRow row) {
        if (row.kind() != CaptureKind.WAVEFORM || row.state().isEmpty()) {
            return List.of();
        }
        return results.waves(row.state().get(), row.condition())
                .map(c -> c.row().run())
                .toList();
    }
}
