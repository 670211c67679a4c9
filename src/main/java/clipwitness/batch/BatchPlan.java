package clipwitness.batch;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import clipwitness.job.Job;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a call is to make: all its jobs are read before the first is made, so that none takes the place of another. */
final class BatchPlan {
    private final ReportOptions options;
    private final Set<Path> seen = new HashSet<>();
    private final List<Step> steps = new ArrayList<>();

    private BatchPlan(ReportOptions options) {
        this.options = options;
    }

    /**
     * One job of the plan.
     *
     * @param folder  of the job
     * @param task    what is to be made
     * @param outcome how it ended already, where it is not to be made
     */
    record Step(Path folder, Optional<Task> task, Optional<JobOutcome> outcome) {
        static Step failed(Path folder, List<Problem> problems) {
            return new Step(folder, Optional.empty(), Optional.of(new JobOutcome.Failed(folder, problems)));
        }
    }

    /** Plans a call: each job once, in order, and with it what looks like a job and is none. */
    static List<Step> of(List<Path> paths, ReportOptions options) {
        BatchPlan plan = new BatchPlan(options);
        for (Path path : paths) {
            plan.add(path);
        }
        return plan.withoutAlike();
    }

    private void add(Path path) {
        try {
            for (JobFolders.Found found : JobFolders.of(path)) {
                if (seen.add(real(found.folder()))) {
                    steps.add(
                            found.problem().isPresent()
                                    ? Step.failed(
                                            found.folder(),
                                            List.of(found.problem().get()))
                                    : step(found.folder()));
                }
            }
        } catch (InputException e) {
            steps.add(Step.failed(path, e.problems()));
        }
    }

    private static Path real(Path folder) {
        try {
            return folder.toRealPath();
        } catch (IOException e) {
            return folder.toAbsolutePath();
        }
    }

    private Step step(Path folder) {
        try {
            return new Step(folder, Optional.of(Task.of(folder, options)), Optional.empty());
        } catch (InputException e) {
            return Step.failed(folder, e.problems());
        } catch (RuntimeException | Error e) { // a fault of the program; a job that fails never stops the next
            return new Step(
                    folder,
                    Optional.empty(),
                    Optional.of(OwnFault.unnumbered(folder, e).outcome(options)));
        }
    }

    /** The steps, those refused that would write a file of another, or under the number of another. */
    private List<Step> withoutAlike() {
        Map<String, Set<Integer>> users = new LinkedHashMap<>();
        for (int i = 0; i < steps.size(); i++) {
            for (String name : steps.get(i).task().map(this::names).orElse(List.of())) {
                users.computeIfAbsent(name, n -> new LinkedHashSet<>()).add(i);
            }
        }
        List<Step> checked = new ArrayList<>(steps);
        for (Set<Integer> alike : users.values()) {
            if (alike.size() > 1) {
                alike.forEach(i -> checked.set(i, refused(i, alike)));
            }
        }
        return checked;
    }

    /** What no other job may have: its number, and the files that it writes where all go to one folder. */
    private List<String> names(Task task) {
        List<String> names = new ArrayList<>(List.of(task.job().sheet().report().number()));
        if (options.out().isPresent()) {
            names.addAll(task.files());
        }
        return names.stream().map(n -> n.toLowerCase(Locale.ROOT)).toList();
    }

    private Step refused(int index, Set<Integer> alike) {
        Step step = steps.get(index);
        Step other =
                steps.get(alike.stream().filter(i -> i != index).findFirst().orElseThrow());
        String number = number(step);
        String what = number.equalsIgnoreCase(number(other))
                ? "the number " + number + " is also that of " + other.folder()
                : "the report " + number + " would write a file that " + number(other) + " in " + other.folder()
                        + " writes too";
        return Step.failed(
                step.folder(),
                List.of(new Problem(
                        ErrorCode.NUMBER_TAKEN,
                        new Origin(step.folder().resolve(Job.SHEET_FILE).toString(), 0, "report.number"),
                        what,
                        "Give each job of one call a number of its own; upper and lower case are alike, as file names are on"
                                + " many machines")));
    }

    private static String number(Step step) {
        return step.task().orElseThrow().job().sheet().report().number();
    }
}
