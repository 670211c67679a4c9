package clipwitness.compare;

import clipwitness.measure.LevelMatched;
import clipwitness.measure.WaveformResult;
import java.util.ArrayList;
import java.util.List;

/** Harmonics of two settings when both are set equally loud. */
final class LevelMatching {
    /** One change for each harmonic that both settings have; none where a setting was refused. */
    List<LevelMatchedHarmonic> of(Setting from, Setting to) {
        WaveformResult a = from.first();
        WaveformResult b = to.first();
        List<LevelMatchedHarmonic> changes = new ArrayList<>();
        int count = Math.min(a.harmonicCount(), b.harmonicCount());
        for (int order = 1; order <= count && !a.refused() && !b.refused(); order++) {
            changes.add(new LevelMatchedHarmonic(from.condition(), order, LevelMatched.of(a, b, order)));
        }
        return changes;
    }
}
