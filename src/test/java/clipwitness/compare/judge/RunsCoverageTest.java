package clipwitness.compare.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The intervals of changes hold the truth as often as they claim, however often the settings were captured. */
class RunsCoverageTest {
    private static final int MANY = Integer.getInteger("coverage.jobs", 400);

    @Tag("coverage")
    @ParameterizedTest
    @CsvSource({"ONCE, 0", "TWICE, 0", "THRICE, 0", "ONE_TWICE, 0", "MIXED, 0", "TWICE, 0.005", "THRICE, 0.005"})
    void changesOfManyJobsHoldTheTruthAsOftenAsTheyClaim(RunPlan plan, double drift) {
        Map<String, IntervalTally> tallies = RunsCoverage.of(plan, drift, MANY);
        System.out.println(String.format(Locale.ROOT, "%s, drift %s%n", plan, drift)
                + tallies.entrySet().stream()
                        .map(e -> String.format("  %-26s %s%n", e.getKey(), e.getValue()))
                        .collect(Collectors.joining()));
        for (ItemValue figure : RunsCoverage.FIGURES) {
            assertThat(tallies.get(figure.item().key()).share())
                    .as(plan + " " + drift + " " + figure)
                    .isBetween(93.0, 97.5);
        }
    }
}
