package clipwitness.compare.rail;

import clipwitness.capture.Condition;
import clipwitness.compare.judge.ItemSource;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemSubject;
import clipwitness.compare.result.RailResult;
import clipwitness.job.JobSheet;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.Argument;
import clipwitness.reason.ComparisonReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Remark;
import clipwitness.reason.RemedyRemark;
import clipwitness.reason.Word;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The items of a comparison that rest on a meter: one a rail, judged whatever the state was meant to become. */
public final class RailItems implements ItemSource {
    private final JobSheet sheet;
    private final RailJudge judge;

    /** The readings of a sheet. */
    public RailItems(JobSheet sheet) {
        this.sheet = sheet;
        this.judge = new RailJudge(sheet);
    }

    @Override
    public List<Item> of(String from, String to, Intent intent) {
        return judge.of(from, to, intent != Intent.DESCRIBED).stream()
                .map(RailItems::item)
                .toList();
    }

    @Override
    public Optional<Reason> whyNot(ItemQuantity quantity, String from, String to) {
        if (quantity != ItemQuantity.RAIL) {
            return Optional.empty();
        }
        return Optional.of(Reason.of(
                sheet.rails().isEmpty() ? ComparisonReason.NO_METER_READINGS : ComparisonReason.NO_READING_TO_COMPARE));
    }

    private static Item item(RailResult rail) {
        boolean open = rail.decision() == Decision.UNDECIDED;
        return new Item(
                ItemQuantity.RAIL,
                Condition.NONE,
                rail.deviation(),
                OptionalDouble.of(rail.limit()),
                rail.decision(),
                rail.conformanceProbability(),
                open ? Optional.of(Remark.of(RemedyRemark.BETTER_METER, Argument.name(rail.name()))) : Optional.empty(),
                Optional.of(new ItemSubject(
                        rail.name(), Remark.of(Word.QUOTED, Argument.name(rail.name())), rail.against())));
    }
}
