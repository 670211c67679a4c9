package clipwitness.report.data;

import clipwitness.compare.judge.ClockDifference;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.EquivalentGain;
import clipwitness.compare.result.Hint;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemSubject;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.compare.result.LevelSeries;
import clipwitness.compare.result.LevelStep;
import clipwitness.compare.result.NotExamined;
import clipwitness.compare.result.OnsetGain;
import clipwitness.compare.result.Series;
import clipwitness.job.ReportInfo;
import clipwitness.measure.FilterCorners;
import clipwitness.measure.Harmonic;
import clipwitness.measure.ListeningFigure;
import clipwitness.measure.ListeningResult;
import clipwitness.measure.Measured;
import clipwitness.measure.TransferCurve;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** The results of a job as JSON, schema {@code clipwitness-results/1}. */
public final class ResultsJson {
    static final String SCHEMA = "clipwitness-results/1";
    private static final Pattern HEAD = Pattern.compile("\\{\\s*\"schema\"\\s*:\\s*\"clipwitness-results/\\d");

    private final JobResults results;
    private final Map<String, String> inputs;
    private final List<String> templates;
    private final JsonText json;

    private ResultsJson(JobResults results, Map<String, String> inputs, List<String> templates, JsonText json) {
        this.results = results;
        this.inputs = inputs;
        this.templates = templates;
        this.json = json;
    }

    /** Whether a file that begins so holds such results, of whatever version. */
    public static boolean isHead(String text) {
        return HEAD.matcher(text).lookingAt();
    }

    /**
     * The document as UTF-8.
     *
     * @param results  results
     * @param software name and version of the program
     */
    public static byte[] bytes(JobResults results, String software) {
        return bytes(results, Map.of(), List.of(), software);
    }

    /**
     * The document as UTF-8, with a list of the inputs, over which the digest is made, and of the templates.
     *
     * @param results   results
     * @param inputs    SHA-256 of each input by its name within the job folder
     * @param templates of the PDFs beside it, in order: the name of one of the program's own, name and digest of any other
     * @param software  name and version of the program
     */
    public static byte[] bytes(
            JobResults results, Map<String, String> inputs, List<String> templates, String software) {
        return JsonText.bytes(json -> new ResultsJson(results, inputs, templates, json).write(software));
    }

    private void write(String software) throws IOException {
        json.object(() -> {
            json.text("schema", SCHEMA);
            report(software);
            json.array("captures", () -> each(results.captures(), this::capture));
            json.array("series", () -> each(results.series(), this::series));
            json.array("comparisons", () -> each(results.comparisons(), this::comparison));
            new DevicesJson(json).write(results.devices());
            new NoiseJson(json).write(results.noise());
            new ResponseJson(json).write(results.responses());
            new RailsJson(json).write(results.job().sheet());
            new FindingsJson(json).write(results);
            json.array("hints", () -> each(results.hints(), this::hint));
        });
    }

    private interface Writer<T> {
        void write(T element) throws IOException;
    }

    private <T> void each(List<T> elements, Writer<T> writer) throws IOException {
        for (T e : elements) {
            json.object(() -> writer.write(e));
        }
    }

    private void report(String software) throws IOException {
        ReportInfo info = results.job().sheet().report();
        json.object("report", () -> {
            json.text("number", info.number());
            json.text("date", info.date().toString());
            json.text("software", software);
            json.text("inputsDigest", results.inputsDigest());
            json.array("inputs", () -> each(List.copyOf(new TreeMap<>(inputs).entrySet()), this::input));
            json.texts("templates", templates);
        });
    }

    private void input(Map.Entry<String, String> input) throws IOException {
        json.text("file", input.getKey());
        json.text("sha256", input.getValue());
    }

    private void capture(CaptureResult c) throws IOException {
        json.text("file", c.row().file());
        json.integer("row", c.row().row());
        json.text("sha256", c.export().sha256());
        json.text("inputFile", c.row().inputFile());
        json.text("inputSha256", c.export().inputSha256());
        json.text("output", c.export().output());
        json.text("input", c.export().input());
        json.text("state", c.row().state());
        json.text("kind", c.row().kind().code());
        json.condition(c.row().condition());
        json.integer("run", c.row().run());
        json.text("device", c.row().device());
        json.integer("samples", c.export().samples());
        json.number("sampleRate", c.export().sampleRate());
        json.texts("channels", c.export().channels());
        json.integer(
                "harmonicCount", c.waveform().map(WaveformResult::harmonicCount).orElse(0));
        json.array("quality", () -> each(c.doubts(), json::doubt));
        straightened(c);
        json.object("values", () -> values(c));
        json.array(
                "harmonics",
                () -> each(c.waveform().map(WaveformResult::harmonics).orElse(List.of()), this::harmonic));
    }

    /** Corners, in Hz, of the filters that were taken off for the figures of the transfer curve; null where none were. */
    private void straightened(CaptureResult c) throws IOException {
        Optional<FilterCorners> corners =
                c.waveform().flatMap(WaveformResult::transfer).flatMap(TransferCurve::straightened);
        if (corners.isEmpty()) {
            json.text("straightened", Optional.empty());
            return;
        }
        json.object("straightened", () -> {
            json.number("lowPass", corners.get().lowPass());
            json.number("highPass", corners.get().highPass());
            json.text("unit", "Hz");
        });
    }

    private void values(CaptureResult c) throws IOException {
        Map<WaveformQuantity, Measured> values =
                c.waveform().map(WaveformResult::values).orElse(Map.of());
        for (Map.Entry<WaveformQuantity, Measured> e : values.entrySet()) {
            json.object(e.getKey().key(), () -> json.measured("value", e.getValue()));
        }
        for (Map.Entry<ListeningFigure, Measured> e :
                c.listening().map(ListeningResult::values).orElse(Map.of()).entrySet()) {
            json.object(e.getKey().key(), () -> json.measured("value", e.getValue()));
        }
    }

    private void harmonic(Harmonic h) throws IOException {
        json.integer("order", h.order());
        json.measured("level", h.level());
        json.number("phase", h.phase());
        json.reasonOfNone(h.phaseReason());
    }

    private void series(Series s) throws IOException {
        json.text("state", s.state());
        json.number("frequency", s.condition().frequency());
        json.number("level", s.condition().level());
        json.text("setting", s.condition().setting());
        json.array("onsetGain", () -> each(s.onsetGain(), this::onset));
        json.array("compressionPoint", () -> each(s.levelSeries(), this::compression));
        json.array("levelSteps", () -> each(s.levelSeries(), this::steps));
    }

    private void onset(OnsetGain o) throws IOException {
        json.number("thd", o.thdPercent());
        json.measuredWithoutUnit("gainPercent", o.gainPercent());
    }

    private void compression(LevelSeries s) throws IOException {
        json.number("gainPercent", s.gainPercent());
        json.measuredWithoutUnit("level", s.compressionPoint());
    }

    private void steps(LevelSeries s) throws IOException {
        json.number("gainPercent", s.gainPercent());
        json.array("steps", () -> each(s.steps(), this::step));
    }

    private void step(LevelStep s) throws IOException {
        json.number("input", s.input());
        json.measuredWithoutUnit("output", s.output());
        json.object("slope", () -> json.measured("value", s.slope()));
    }

    private void comparison(Comparison c) throws IOException {
        json.text("from", c.from());
        json.text("to", c.to());
        json.text("intent", c.intent().code());
        json.text("verdict", c.verdict().code());
        json.reason(c.reason());
        json.texts("judged", c.judged().stream().map(q -> q.key()).toList());
        json.array("notExamined", () -> each(c.notExamined(), this::notExamined));
        json.array("items", () -> each(c.items(), this::item));
        json.array("levelMatched", () -> each(c.levelMatched(), this::levelMatched));
        json.array("equivalentGain", () -> each(c.equivalentGain(), this::equivalentGain));
        json.array("clockDifference", () -> each(ClockDifference.of(results, c), this::clockDifference));
    }

    private void clockDifference(ClockDifference d) throws IOException {
        json.condition(d.condition());
        json.measured("ratio", d.ratio());
    }

    private void notExamined(NotExamined n) throws IOException {
        json.text("quantity", n.quantity().key());
        json.reason(Optional.of(n.reason()));
    }

    private void item(Item i) throws IOException {
        json.text("quantity", i.quantity().key());
        json.text("subject", i.subject().map(ItemSubject::key));
        json.condition(i.condition());
        json.measured("change", i.change());
        json.number("limit", i.limit());
        json.text("decision", i.decision().code());
        json.number("conformanceProbability", i.conformanceProbability());
        json.budget(i.change());
        json.statement("remedy", i.remedy());
    }

    private void levelMatched(LevelMatchedHarmonic h) throws IOException {
        json.condition(h.condition());
        json.integer("order", h.order());
        json.measured("change", h.change());
    }

    private void equivalentGain(EquivalentGain e) throws IOException {
        json.number("frequency", e.condition().frequency());
        json.number("level", e.condition().level());
        json.text("setting", e.condition().setting());
        json.number("fromGainPercent", e.fromGainPercent());
        json.measuredWithoutUnit("toGainPercent", e.toGainPercent());
    }

    private void hint(Hint h) throws IOException {
        json.text("code", h.code().code());
        json.text("state", h.state());
        json.texts("states", h.states());
        json.statement("text", Optional.of(h.text()));
        json.statement("evidence", Optional.of(h.evidence()));
    }
}
