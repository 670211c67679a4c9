package clipwitness.compare.rail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemSubject;
import clipwitness.fault.InputException;
import clipwitness.fixture.Said;
import clipwitness.fixture.TestExamination;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.ComparisonReason;
import clipwitness.reason.Reason;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Meter readings as items of a comparison, worked out by hand. */
class RailItemsTest {
    private static final String READINGS = """
        bench: {meter-accuracy: 0.5 %}
        rails:
          - {name: supply, expected: 9 V, before: 9.00 V, old: 8.50 V, new: 9.10 V}
          - {name: bias, before: 4.50 V, old: 4.52 V}
          - {name: offset, before: 0 V, old: 0.1 V}
          - {name: current, expected: 8 mA, old: 8.1 mA}
        """;

    @TempDir
    private Path folder;

    private RailItems rails(String sections) throws IOException, InputException {
        return new RailItems(new TestExamination(folder).job(sections).sheet());
    }

    /** 8.50 V is 5.6 % below 9 V; 4.52 V is 0.44 % above 4.50 V; a reading of 0 V before leaves the offset out. The limit is 2 %. */
    @Test
    void aRailIsOneItemNamedByTheSheet() throws IOException, InputException {
        List<Item> items = rails(READINGS).of("before", "old", Intent.UNCHANGED);
        assertThat(items).extracting(i -> i.subject().orElseThrow().key()).containsExactly("supply", "bias", "current");
        assertThat(items)
                .extracting(i -> i.subject().orElseThrow().against())
                .containsExactly(
                        ItemSubject.Against.EXPECTATION, ItemSubject.Against.BEFORE, ItemSubject.Against.EXPECTATION);
        assertThat(items.get(0).change().value().orElseThrow()).isCloseTo(-5.55556, within(1e-4));
        assertThat(items.get(1).change().value().orElseThrow()).isCloseTo(0.44444, within(1e-4));
        assertThat(items).extracting(Item::quantity).containsOnly(ItemQuantity.RAIL);
        assertThat(items).allSatisfy(i -> assertThat(i.limit()).hasValue(2));
        assertThat(items.get(0).decision()).isEqualTo(Decision.FAIL);
        assertThat(items.get(0).conformanceProbability().orElseThrow()).isLessThan(1e-6);
        assertThat(items.get(0).remedy()).isEmpty();
        assertThat(items.get(1).decision()).isEqualTo(Decision.PASS);
    }

    /** 8.1 mA errs by 0.0405 mA and 0.1 mA: U = 2 * 0.1405 / sqrt 3 = 0.162 mA, 2.03 % of 8 mA, about a deviation of 1.25 %. */
    @Test
    void aMeterTooCoarseLeavesItOpenAndAsksForABetterOne() throws IOException, InputException {
        Item current = rails(READINGS).of("before", "old", Intent.CHANGED).get(2);
        assertThat(current.decision()).isEqualTo(Decision.UNDECIDED);
        assertThat(current.change().expandedUncertainty().orElseThrow()).isCloseTo(2.0279, within(1e-3));
        assertThat(Said.remark(current.remedy()))
                .hasValueSatisfying(s -> assertThat(s).contains("current"));
    }

    @Test
    void aStateThatIsOnlyShownIsDescribed() throws IOException, InputException {
        List<Item> items = rails(READINGS).of("before", "old", Intent.DESCRIBED);
        assertThat(items).hasSize(3).allSatisfy(i -> {
            assertThat(i.decision()).isEqualTo(Decision.DESCRIBED);
            assertThat(i.conformanceProbability()).isEmpty();
            assertThat(i.remedy()).isEmpty();
        });
    }

    @Test
    void whyThereIsNoRailIsSaid() throws IOException, InputException {
        assertThat(rails(READINGS).whyNot(ItemQuantity.LEVEL, "before", "new")).isEmpty();
        assertThat(rails(READINGS).whyNot(ItemQuantity.RAIL, "before", "new").map(Reason::code))
                .hasValue(ComparisonReason.NO_READING_TO_COMPARE);
        assertThat(rails("").whyNot(ItemQuantity.RAIL, "before", "new").map(Reason::code))
                .hasValue(ComparisonReason.NO_METER_READINGS);
    }
}
