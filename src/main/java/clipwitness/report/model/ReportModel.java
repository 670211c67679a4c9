package clipwitness.report.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * All that a template receives, as {@code report}. The file {@code report-templates/README.md} explains it to those who write
 * templates.
 *
 * @param identity    what the report is and about what
 * @param verdicts    a verdict for each comparison
 * @param marked      which comparison the marks are about; empty where only one is judged
 * @param marks       four marks: sound, noise, treble, rails
 * @param findings    what else was found, each with a lead of two to five words
 * @param hints       figures that look like a known fault
 * @param notExamined what no comparison could look at
 * @param examined    what was looked at, and doubts about it that belong on the first page
 * @param kept        recordings that are kept, neither compared nor judged; empty where there is none
 * @param keyFigures  key figures of all states under one condition
 * @param figures     pictures by name
 * @param photos      photos
 * @param bench       where and with what was measured
 * @param rails       meter readings, in several tables where there are many states
 * @param noise       noise and hum, a table for each condition
 * @param response    frequency response, a table for each condition
 * @param devices     the traced devices
 * @param doubts      doubts in words
 * @param plainDoubts what the doubts mean for the sound, for those who do not measure
 * @param conformity  statement of conformity
 * @param cautions    cautions
 * @param overGain    figures over the gain control, a group for each quantity
 * @param series      where distortion reaches a mark, and level steps
 * @param comparisons comparisons in full
 * @param sheets      figures of the captures, side by side
 * @param captures    captures
 * @param layouts     how the layouts of the exports were read: files and evidence
 */
public record ReportModel(
        IdentityPart identity,
        List<Verdict> verdicts,
        String marked,
        List<ShownMark> marks,
        List<ShownFinding> findings,
        List<Fact> hints,
        List<String> notExamined,
        List<String> examined,
        String kept,
        Table keyFigures,
        Map<String, ShownFigure> figures,
        List<ShownPhoto> photos,
        BenchPart bench,
        List<Table> rails,
        List<Table> noise,
        List<Table> response,
        DevicesPart devices,
        List<ListedDoubt> doubts,
        List<ListedDoubt> plainDoubts,
        ConformityPart conformity,
        List<String> cautions,
        List<GroupTable> overGain,
        List<Table> series,
        List<ComparisonPart> comparisons,
        List<CaptureSheet> sheets,
        List<ListedCapture> captures,
        List<Fact> layouts) {
    private static final Set<String> HALF_WIDTH = Set.of("transfer", "harmonics");

    /** The pictures that half of the page's width suits, two by two, those of one condition together. */
    public List<List<ShownFigure>> halfWidth() {
        return Parts.pairs(figures.values().stream()
                .filter(f -> HALF_WIDTH.contains(f.kind()))
                .toList());
    }

    /** Copies what it is given. */
    public ReportModel {
        verdicts = List.copyOf(verdicts);
        marks = List.copyOf(marks);
        findings = List.copyOf(findings);
        hints = List.copyOf(hints);
        notExamined = List.copyOf(notExamined);
        examined = List.copyOf(examined);
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
        photos = List.copyOf(photos);
        rails = List.copyOf(rails);
        noise = List.copyOf(noise);
        response = List.copyOf(response);
        doubts = List.copyOf(doubts);
        plainDoubts = List.copyOf(plainDoubts);
        cautions = List.copyOf(cautions);
        overGain = List.copyOf(overGain);
        series = List.copyOf(series);
        comparisons = List.copyOf(comparisons);
        sheets = List.copyOf(sheets);
        captures = List.copyOf(captures);
        layouts = List.copyOf(layouts);
    }

    /** The verdicts on states that must still be what they were. */
    public List<Verdict> unchanged() {
        return verdicts.stream().filter(Verdict::unchanged).toList();
    }

    /** The verdicts on all other states, but those that are told with another. */
    public List<Verdict> changed() {
        return verdicts.stream().filter(v -> !v.unchanged() && !v.told()).toList();
    }
}
