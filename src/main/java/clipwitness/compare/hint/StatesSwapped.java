package clipwitness.compare.hint;

import clipwitness.compare.judge.ItemBuilder;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Hint;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemQuantity;
import clipwitness.job.Role;
import clipwitness.job.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The switch positions were mixed up: at the settings with more than 3 % distortion the changed state meets every limit set for an
 * unchanged one, and the unchanged state fails the null-depth limit at one setting or more.
 */
final class StatesSwapped implements HintRule {
    private static final String CODE = "states-swapped";

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
                        && ofChanged.stream().filter(Item::judged).allMatch(i -> i.decision() == Decision.PASS);
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

    private static Hint hint(State unchanged, State changed, List<Item> ofChanged) {
        long settings = ofChanged.stream().map(Item::condition).distinct().count();
        return new Hint(
                CODE,
                Optional.of(unchanged.name()),
                "“" + changed.label() + "” sounds as the unit did before and “" + unchanged.label()
                        + "” does not: the two positions, or their captures, look swapped.",
                "“" + changed.label() + "” meets every limit for an unchanged state at " + settings
                        + (settings == 1 ? " clipped setting; “" : " clipped settings; “") + unchanged.label()
                        + "” fails the null-depth limit");
    }
}
