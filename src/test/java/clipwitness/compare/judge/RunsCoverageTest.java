package clipwitness.compare.judge;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The intervals of changes hold the truth as often as they claim, however often the settings were captured. */
class RunsCoverageTest {
    private static final int MANY = Integer.getInteger("coverage.jobs", 400);

    @Tag("coverage")
    @Test
    void changesOfManyJobsHoldTheTruthAsOftenAsTheyClaim() {
        check(List.of(RunPlan.values()), 0);
    }

    /** What differs from run to run and is no knob shows only where something was set twice. */
    @Tag("coverage")
    @Test
    void soTheyDoWhereRunsDifferByMoreThanTheKnob() {
        check(List.of(RunPlan.TWICE, RunPlan.THRICE), 0.005);
    }

    private static void check(List<RunPlan> plans, double drift) {
        SoftAssertions shares = new SoftAssertions();
        RunsCoverage.of(plans, drift, MANY).forEach((plan, tallies) -> {
            System.out.println(String.format(Locale.ROOT, "%s, drift %s%n", plan, drift)
                    + tallies.entrySet().stream()
                            .map(e -> String.format("  %-26s %s%n", e.getKey(), e.getValue()))
                            .collect(Collectors.joining()));
            for (ItemValue figure : RunsCoverage.FIGURES) {
                shares.assertThat(tallies.get(figure.item().key()).share())
                        .as(plan + " " + drift + " " + figure)
                        .isBetween(93.0, 97.5);
            }
        });
        shares.assertAll();
    }
}
