package clipwitness.report.build;

import clipwitness.compare.result.Hint;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.rule.Findings;
import clipwitness.figure.canvas.Figure;
import clipwitness.job.Photo;
import clipwitness.report.model.Fact;
import clipwitness.report.model.ReportModel;
import clipwitness.report.model.ShownFigure;
import clipwitness.report.model.ShownFinding;
import clipwitness.report.model.ShownPhoto;
import clipwitness.report.words.FindingText;
import clipwitness.report.words.JobWording;
import clipwitness.words.WordBundle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Makes what a template receives. */
public final class ReportModels {
    private final WordBundle words;

    /** Models in these words. */
    public ReportModels(WordBundle words) {
        this.words = words;
    }

    /**
     * The model of a job.
     *
     * @param results  results
     * @param figures  pictures by name
     * @param logo     name under which the page finds the logo, empty where there is none
     * @param photos   names under which the page finds the photos, in the sheet's order
     * @param software program and version
     */
    public ReportModel of(
            JobResults results, Map<String, Figure> figures, String logo, List<String> photos, String software) {
        JobWording wording = new JobWording(words, results);
        Findings found = Findings.of(results);
        VerdictBuilder verdicts = new VerdictBuilder(wording, found);
        FindingText findings = new FindingText(wording);
        MarksBuilder marks = new MarksBuilder(wording);
        ComparisonBuilder comparisons = new ComparisonBuilder(wording, results, verdicts);
        SeriesBuilder series = new SeriesBuilder(wording);
        CaptureBuilder captures = new CaptureBuilder(wording);
        return new ReportModel(
                new IdentityBuilder(wording).of(results, logo, software),
                results.comparisons().stream().map(verdicts::of).toList(),
                marks.about(results),
                marks.of(results),
                findings.firstPage(found).stream()
                        .map(f -> new ShownFinding(f.lead(), f.text()))
                        .toList(),
                results.hints().stream().map(h -> hint(h, wording)).toList(),
                new NotExaminedList(wording).of(results.comparisons()),
                new ExaminedList(wording).of(results),
                new KeptRecordings(wording).of(results),
                new KeyTable(wording).of(results, found.page()),
                figures(figures),
                photos(results, photos, wording),
                new BenchBuilder(wording).of(results),
                new RailTable(wording, results.job().sheet()).all(),
                new NoiseTable(wording).of(results),
                new ResponseTable(wording).of(results),
                new DevicesBuilder(wording).of(results.devices()),
                new DoubtBuilder(wording).all(results.captures()),
                new PlainDoubts(wording).of(results.captures()),
                new ConformityBuilder(wording).of(results),
                cautions(wording),
                series.overGain(results),
                series.of(results),
                results.comparisons().stream().map(comparisons::of).toList(),
                new CaptureSheets(wording, results).all(),
                results.captures().stream().map(captures::of).toList(),
                LayoutList.of(results.captures(), wording.speech()));
    }

    private static Fact hint(Hint hint, JobWording wording) {
        return new Fact(wording.speech().text(hint.text()), wording.speech().text(hint.evidence()));
    }

    private static Map<String, ShownFigure> figures(Map<String, Figure> figures) {
        Map<String, ShownFigure> shown = new LinkedHashMap<>();
        figures.forEach((name, figure) -> shown.put(name, ShownFigure.of(name, figure)));
        return shown;
    }

    private static List<ShownPhoto> photos(JobResults results, List<String> sources, JobWording wording) {
        List<Photo> photos = results.job().sheet().photos();
        return PhotoOrder.of(photos, results.job().sheet().states()).stream()
                .filter(i -> i < sources.size())
                .map(i -> photo(photos.get(i), sources.get(i), wording))
                .toList();
    }

    private static ShownPhoto photo(Photo photo, String source, JobWording wording) {
        String alt = photo.caption().isEmpty()
                ? wording.say("photo.alt.none")
                : wording.say("photo.alt", "caption", photo.caption());
        return new ShownPhoto(
                source, photo.caption(), photo.state().map(wording::label).orElse(""), alt);
    }

    private static List<String> cautions(JobWording wording) {
        List<String> cautions = new ArrayList<>();
        for (int i = 1; i <= 6; i++) {
            cautions.add(wording.say("caution." + i));
        }
        return cautions;
    }
}
