package clipwitness.compare.hint;

import clipwitness.compare.judge.ItemBuilder;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Hint;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.Argument;
import clipwitness.reason.HintCode;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The switch positions were mixed up: at the settings with more than 3 % distortion the changed state fails no limit set for an unchanged
 * one and meets that of the null depth somewhere, and the unchanged state fails the null-depth limit at one setting or more.
 */
final class StatesSwapped implements HintRule {
    @Override
    public List<Hint> look(Evidence evidence) {
        List<Hint> hints = new ArrayList<>();
        for (State unchanged : evidence.states(Role.UNCHANGED)) {
            List<Item> ofUnchanged = items(evidence, unchanged);
            boolean fails = ofUnchanged.stream()
                    .anyMatch(i -> i.quantity() == ItemQuantity.NULL_DEPTH && i.decision() == Decision.FAIL);
            for (State changed : evidence.states(Role.CHANGED)) {
                List<Item> ofChanged = items(evidence, changed);
                boolean meetsAll = !ofChanged.isEmpty()
                        && ofChanged.stream().noneMatch(i -> i.decision() == Decision.FAIL)
                        && ofChanged.stream().anyMatch(StatesSwapped::nulls);
                if (fails && meetsAll) {
                    hints.add(hint(unchanged, changed, ofChanged));
                }
            }
        }
        return hints;
    }

    private static List<Item> items(Evidence evidence, State state) {
        ItemBuilder builder = evidence.items(Intent.UNCHANGED);
        List<Item> items = new ArrayList<>();
        for (StateAtCondition s : evidence.catalogue().of(state.name())) {
            Optional<StateAtCondition> before = evidence.before(state, s);
            if (before.isPresent() && before.get().isClipped()) {
                items.addAll(builder.of(before.get(), s));
            }
        }
        return items;
    }

    private static boolean nulls(Item item) {
        return item.quantity() == ItemQuantity.NULL_DEPTH && item.decision() == Decision.PASS;
    }

    private static Hint hint(State unchanged, State changed, List<Item> ofChanged) {
        long settings = ofChanged.stream().map(Item::condition).distinct().count();
        Argument moved = Argument.name(changed.called());
        Argument kept = Argument.name(unchanged.called());
        return new Hint(
                HintCode.STATES_SWAPPED,
                List.of(unchanged.name(), changed.name()),
                Remark.of(HintRemark.STATES_SWAPPED, moved, kept),
                settings == 1
                        ? Remark.of(HintRemark.STATES_SWAPPED_BY_ONE, moved, kept)
                        : Remark.of(HintRemark.STATES_SWAPPED_BY, moved, Argument.count(settings), kept));
    }
}
