package clipwitness.compare.judge;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemSubject;
import clipwitness.compare.result.RailResult;
import clipwitness.job.JobSheet;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.Argument;
import clipwitness.reason.Remark;
import clipwitness.reason.RemedyRemark;
import clipwitness.reason.Word;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The items of a comparison that rest on a meter: one a rail, judged whatever the state was meant to become. */
final class RailItems {
    private final RailJudge judge;

    RailItems(JobSheet sheet) {
        this.judge = new RailJudge(sheet);
    }

    List<Item> of(String from, String to, Intent intent) {
        return judge.of(from, to, intent != Intent.DESCRIBED).stream()
                .map(RailItems::item)
                .toList();
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
