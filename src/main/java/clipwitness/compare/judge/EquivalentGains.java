package clipwitness.compare.judge;

import clipwitness.compare.result.EquivalentGain;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.series.ThdCurve;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Settings of one state that distort as another state does at its settings. */
final class EquivalentGains {
    private final Catalogue catalogue;
    private final Repeatability repeatability;

    EquivalentGains(Catalogue catalogue, Repeatability repeatability) {
        this.catalogue = catalogue;
        this.repeatability = repeatability;
    }

    /** One answer for each setting of the gain control of {@code from} whose distortion is known. */
    List<EquivalentGain> of(String from, String to) {
        List<EquivalentGain> answers = new ArrayList<>();
        Set<StateAtCondition> done = new HashSet<>();
        for (StateAtCondition start : catalogue.of(from)) {
            Optional<StateAtCondition> partner = catalogue.at(to, start.condition());
            if (start.condition().gainPercent().isEmpty() || partner.isEmpty() || done.contains(start)) {
                continue;
            }
            List<StateAtCondition> along = catalogue.alongGain(start);
            done.addAll(along);
            answers.addAll(answers(along, GainSeries.thdCurve(catalogue.alongGain(partner.get()), repeatability)));
        }
        return answers;
    }

    private List<EquivalentGain> answers(List<StateAtCondition> from, ThdCurve to) {
        List<EquivalentGain> answers = new ArrayList<>();
        for (StateAtCondition s : from) {
            Measured thd = repeatability.alongGain(s, WaveformQuantity.THD);
            thd.asValue()
                    .filter(v -> !v.isUpperBound())
                    .ifPresent(v -> answers.add(
                            new EquivalentGain(s.condition().withoutGain(), Catalogue.gain(s), to.gainAt(v))));
        }
        return answers;
    }
}
