package clipwitness.compare.judge;

import clipwitness.capture.Condition;
import clipwitness.compare.result.LevelSeries;
import clipwitness.compare.result.OnsetGain;
import clipwitness.compare.result.Series;
import clipwitness.compare.result.SeriesPoint;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.series.ThdCurve;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Series over the gain control, and over the level where level steps were captured. */
public final class GainSeries {
    private final Catalogue catalogue;
    private final Repeatability repeatability;
    private final OptionalDouble jobLevel;

    /** A catalogue, how well its figures repeat, and the stimulus level of the job sheet. */
    public GainSeries(Catalogue catalogue, Repeatability repeatability, OptionalDouble jobLevel) {
        this.catalogue = catalogue;
        this.repeatability = repeatability;
        this.jobLevel = jobLevel;
    }

    /** All series, states in the given order; a single setting is a series of one point. */
    public List<Series> of(List<String> states) {
        List<Series> all = new ArrayList<>();
        for (String state : states) {
            Map<Condition, List<StateAtCondition>> groups = new LinkedHashMap<>();
            for (StateAtCondition s : catalogue.of(state)) {
                if (s.condition().gainPercent().isPresent()) {
                    groups.computeIfAbsent(s.condition().withoutGain(), k -> catalogue.alongGain(s));
                }
            }
            groups.forEach((condition, along) -> all.add(series(state, condition, along)));
        }
        return all;
    }

    /** Distortion over the gain control, with how well the control is set again. */
    static ThdCurve thdCurve(List<StateAtCondition> along, Repeatability repeatability) {
        List<Double> gains = new ArrayList<>();
        List<Measured> thds = new ArrayList<>();
        for (StateAtCondition s : along) {
            gains.add(Catalogue.gain(s));
            thds.add(repeatability.alongGain(s, WaveformQuantity.THD));
        }
        return ThdCurve.of(gains, thds);
    }

    private Series series(String state, Condition condition, List<StateAtCondition> along) {
        ThdCurve curve = thdCurve(along, repeatability);
        List<OnsetGain> onsets = new ArrayList<>();
        for (double mark : CommonPractice.ONSET_MARKS_PERCENT) {
            onsets.add(new OnsetGain(mark, curve.gainAt(Measured.of(mark, Unit.PERCENT))));
        }
        return new Series(
                state, condition, along.stream().map(this::point).toList(), onsets, levelSeries(state, condition));
    }

    private SeriesPoint point(StateAtCondition setting) {
        Map<WaveformQuantity, Measured> values = new EnumMap<>(WaveformQuantity.class);
        for (WaveformQuantity q : setting.first().values().keySet()) {
            Measured figure = repeatability.figure(setting, q);
            values.put(q, setting.hasVolts() ? figure : WaveformResult.withoutVolts(figure));
        }
        return new SeriesPoint(Catalogue.gain(setting), values);
    }

    private List<LevelSeries> levelSeries(String state, Condition condition) {
        if (!condition.level().equals(jobLevel)) {
            return List.of(); // the steps belong to the series at the sheet's level
        }
        Map<Condition, List<StateAtCondition>> steps = new LinkedHashMap<>();
        for (StateAtCondition s : catalogue.of(state)) {
            if (s.condition().level().isPresent()
                    && s.condition().withoutLevel().withoutGain().equals(condition.withoutLevel())) {
                steps.computeIfAbsent(s.condition().withoutLevel(), k -> new ArrayList<>())
                        .add(s);
            }
        }
        return steps.values().stream()
                .filter(s -> s.size() > 1)
                .map(LevelSteps::series)
                .toList();
    }
}
