package clipwitness.compare.plan;

import clipwitness.job.Attachment;
import clipwitness.job.Bench;
import clipwitness.job.JobSheet;
import clipwitness.job.Limits;
import clipwitness.job.Paper;
import clipwitness.job.ReportInfo;
import clipwitness.job.Role;
import clipwitness.job.Shop;
import clipwitness.job.State;
import clipwitness.job.Stimulus;
import clipwitness.job.UnitUnderTest;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** A sheet with nothing but the usual limits and the usual bench. */
public final class UsualSheet {
    private UsualSheet() {}

    /** A sheet with the three usual states. */
    public static JobSheet of() {
        return sheet(
                new Bench(
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        List.of(),
                        Bench.DEFAULT_VERTICAL_ACCURACY,
                        Bench.DEFAULT_KNOB_REPEATABILITY,
                        Bench.DEFAULT_METER_ACCURACY),
                new Stimulus(Stimulus.SINE, OptionalDouble.empty(), OptionalDouble.empty()),
                new Limits(Map.of()),
                List.of(
                        state("before", "As received", Role.BEFORE, Optional.empty()),
                        state("original", "After, original position", Role.UNCHANGED, Optional.of("before")),
                        state("new", "After, new position", Role.CHANGED, Optional.of("before"))));
    }

    private static State state(String name, String label, Role role, Optional<String> against) {
        return new State(name, label, role, against, List.of());
    }

    /** A sheet with one state before the work, for captures of the model unit. */
    static JobSheet ofModel(JobSheet job, Stimulus stimulus) {
        return sheet(
                job.bench(),
                stimulus,
                job.limits(),
                List.of(state(ModelUnit.STATE, "Before", Role.BEFORE, Optional.empty())));
    }

    private static JobSheet sheet(Bench bench, Stimulus stimulus, Limits limits, List<State> states) {
        ReportInfo report = new ReportInfo(
                "plan",
                "",
                LocalDate.EPOCH,
                Optional.empty(),
                OptionalInt.empty(),
                Optional.empty(),
                "customer",
                "en",
                Paper.A4,
                Set.of(Attachment.values()));
        return new JobSheet(
                report,
                new Shop("", "", Optional.empty(), ""),
                "",
                new UnitUnderTest("", "", "", ""),
                "",
                bench,
                stimulus,
                Map.of(),
                states,
                limits,
                List.of(),
                Optional.empty(),
                List.of());
    }
}
