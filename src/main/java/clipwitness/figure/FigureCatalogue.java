package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.Series;
import clipwitness.compare.rule.Findings;
import clipwitness.compare.rule.WaveGroup;
import clipwitness.compare.rule.WaveGroups;
import clipwitness.figure.canvas.Figure;
import clipwitness.words.Speech;
import clipwitness.words.WordBundle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The figures of a job. A figure that has nothing to show is absent. Names, in reading order:
 *
 * <ul>
 *   <li>{@code answer}: mean cycles at the setting of which the first page speaks: as captured, set equally loud, and what is left
 *   <li>{@code cycles-main}: mean cycles of all states at the main setting of the gain control
 *   <li>{@code cycles}: the same at every setting, {@code cycles-matched}: each over its rms, with differences
 *   <li>{@code transfer}: output against input at that setting, {@code transfer-all}: at every setting
 *   <li>{@code harmonics}: at that setting, {@code harmonics-all}: at every setting
 *   <li>{@code series}: all quantities against the gain control; {@code series-thd}, {@code series-level},
 *       {@code series-onset}, {@code series-crest}, {@code series-asymmetry}, {@code series-clip-asymmetry}: one each
 *   <li>{@code levels}: output against input where level steps were captured
 *   <li>{@code noise}: spectra of the captures of noise, the lines of the mains named
 *   <li>{@code response}: gain over frequency, and its changes with the band of the limit
 *   <li>{@code decisions}: judged items of the first comparison that has any
 *   <li>{@code devices}: curves of the traced devices, {@code devices-pairs}: of the pairs that they make,
 *       {@code devices-predicted}: predicted and measured cycles
 * </ul>
 *
 * <p>These are for the condition with the most captures. The further conditions' figures follow, named with {@code -2},
 * {@code -3} and so on in the order of the captures table, each condition keeping its number throughout; further comparisons' decisions are {@code decisions-2} and so on, in
 * the sheet's order.
 */
public final class FigureCatalogue {
    private final JobResults results;
    private final Speech speech;
    private final Map<String, Figure> figures = new LinkedHashMap<>();

    private FigureCatalogue(JobResults results, Speech speech) {
        this.results = results;
        this.speech = speech;
    }

    /** The figures of a job in the program's own words, with numbers as its report writes them. */
    public static FigureCatalogue of(JobResults results) {
        return of(results, WordBundle.builtIn());
    }

    /** The figures of a job in the words of its report. */
    public static FigureCatalogue of(JobResults results, WordBundle words) {
        FigureCatalogue catalogue = new FigureCatalogue(
                results, Speech.of(words, results.job().sheet().report().language()));
        catalogue.collect();
        return catalogue;
    }

    /** All figures by name, in reading order. */
    public Map<String, Figure> all() {
        return Collections.unmodifiableMap(figures);
    }

    private void collect() {
        List<WaveGroup> groups = WaveGroups.of(results);
        Map<Condition, List<Series>> series = seriesByCondition();
        Set<Condition> conditions = new LinkedHashSet<>();
        groups.forEach(g -> conditions.add(g.condition()));
        conditions.addAll(series.keySet());
        Condition main = conditions.stream().findFirst().orElseGet(FigureCatalogue::noCondition);
        FigureContext context = FigureContext.of(results, main, speech);
        List<Condition> numbered = List.copyOf(conditions);
        addAnswer(context, groups);
        for (WaveGroup group : groups) {
            addWaves(context, group, suffix(numbered.indexOf(group.condition())));
        }
        series.forEach((condition, states) -> {
            String suffix = suffix(numbered.indexOf(condition));
            addSeries(new SeriesFigures(context, states), suffix);
            LevelFigures levels = new LevelFigures(context, states);
            if (levels.hasSteps()) {
                figures.put("levels" + suffix, levels.all());
            }
        });
        NoiseFigures noise = new NoiseFigures(context);
        if (noise.hasSpectra()) {
            figures.put("noise", noise.all());
        }
        ResponseFigures responses = new ResponseFigures(context);
        if (responses.hasCurves()) {
            figures.put("response", responses.all());
        }
        addDecisions(context);
        figures.putAll(new DeviceFigures(context).all());
    }

    private void addAnswer(FigureContext context, List<WaveGroup> groups) {
        Optional<Condition> page = Findings.of(results).page();
        for (WaveGroup group : groups) {
            group.settings().stream()
                    .filter(s -> page.equals(Optional.of(group.conditionOf(s))))
                    .findFirst()
                    .ifPresent(s -> figures.put("answer", new AnswerFigure(context, group, s).figure()));
        }
    }

    /** The condition of a job without waves. */
    static Condition noCondition() {
        return Condition.NONE;
    }

    private static String suffix(int index) {
        return index == 0 ? "" : "-" + (index + 1);
    }

    private void addWaves(FigureContext context, WaveGroup group, String suffix) {
        boolean several = group.settings().size() > 1;
        CycleFigures cycles = new CycleFigures(context, group);
        figures.put("cycles-main" + suffix, cycles.chosen());
        if (several) {
            figures.put("cycles" + suffix, cycles.all());
        }
        MatchedFigures matched = new MatchedFigures(context, group);
        if (matched.hasPairs()) {
            figures.put("cycles-matched" + suffix, matched.all());
        }
        TransferFigures transfer = new TransferFigures(context, group);
        if (transfer.hasCurves()) {
            figures.put("transfer" + suffix, transfer.chosen());
            if (several) {
                figures.put("transfer-all" + suffix, transfer.all());
            }
        }
        HarmonicFigures harmonics = new HarmonicFigures(context, group);
        if (harmonics.hasHarmonics()) {
            figures.put("harmonics" + suffix, harmonics.chosen());
            if (several) {
                figures.put("harmonics-all" + suffix, harmonics.all());
            }
        }
    }

    private Map<Condition, List<Series>> seriesByCondition() {
        Map<Condition, List<Series>> byCondition = new LinkedHashMap<>();
        for (Series one : results.series()) {
            if (!one.points().isEmpty()) {
                byCondition
                        .computeIfAbsent(one.condition().withoutGain(), c -> new ArrayList<>())
                        .add(one);
            }
        }
        return byCondition;
    }

    private void addSeries(SeriesFigures series, String suffix) {
        List<SeriesQuantity> shown = new ArrayList<>();
        for (SeriesQuantity quantity : SeriesQuantity.values()) {
            if (series.has(quantity)) {
                shown.add(quantity);
            }
        }
        if (!shown.isEmpty()) {
            figures.put("series" + suffix, series.of(shown));
            shown.forEach(q -> figures.put("series-" + q.key() + suffix, series.of(q)));
        }
    }

    private void addDecisions(FigureContext context) {
        int index = 0;
        for (Comparison comparison : results.comparisons()) {
            if (comparison.items().stream().anyMatch(Item::judged)) {
                figures.put("decisions" + suffix(index++), new DecisionFigure(context, comparison));
            }
        }
    }
}
