package clipwitness.compare.judge;

import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.measure.LevelChange;
import clipwitness.measure.LevelSide;
import clipwitness.measure.Measured;
import java.util.ArrayList;
import java.util.List;

/** Harmonics of two settings when both are set equally loud; how well the controls are set again counts once for each state. */
public final class ChangesAtEqualLevel {
    private final Repeatability repeatability;

    public ChangesAtEqualLevel(Repeatability repeatability) {
        this.repeatability = repeatability;
    }

    /** One change for each harmonic that both settings have; none where a setting was refused. */
    public List<LevelMatchedHarmonic> of(StateAtCondition from, StateAtCondition to) {
        List<LevelMatchedHarmonic> changes = new ArrayList<>();
        boolean refused = from.first().refused() || to.first().refused();
        int count = Math.min(from.first().harmonicCount(), to.first().harmonicCount());
        for (int order = 1; order <= count && !refused; order++) {
            changes.add(new LevelMatchedHarmonic(from.condition(), order, change(from, to, order)));
        }
        return changes;
    }

    private Measured change(StateAtCondition from, StateAtCondition to, int order) {
        Measured before = figure(from, order);
        Measured after = figure(to, order);
        if (before instanceof Measured.Value a && after instanceof Measured.Value b) {
            return LevelChange.of(
                    LevelSide.ofFirstOrder(a, List.of()), LevelSide.ofFirstOrder(b, List.of()), List.of());
        }
        return before.asValue().isEmpty() ? before : after;
    }

    private Measured figure(StateAtCondition setting, int order) {
        return repeatability.levelMatched(setting, order);
    }
}
