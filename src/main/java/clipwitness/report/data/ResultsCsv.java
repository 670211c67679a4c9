package clipwitness.report.data;

import clipwitness.capture.Condition;
import clipwitness.compare.rail.RailJudge;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Devices;
import clipwitness.compare.result.EquivalentGain;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemSubject;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.compare.result.LevelSeries;
import clipwitness.compare.result.NotExamined;
import clipwitness.compare.result.OnsetGain;
import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.RailResult;
import clipwitness.compare.result.Series;
import clipwitness.compare.result.StateNoise;
import clipwitness.compare.result.StatePrediction;
import clipwitness.compare.result.StateResponse;
import clipwitness.compare.result.TracedDevice;
import clipwitness.measure.Harmonic;
import clipwitness.measure.ListeningFigure;
import clipwitness.measure.ListeningResult;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.match.MatchedPair;
import clipwitness.measure.noise.HumLine;
import clipwitness.measure.noise.NoiseFigure;
import clipwitness.measure.response.ResponsePoint;
import clipwitness.reason.Reason;
import clipwitness.words.Speech;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** The results of a job as one table, a row a figure, for those who go on with a spreadsheet; the first row holds the digest of the inputs. */
public final class ResultsCsv {
    private static final String[] COLUMNS = {
        "section",
        "state",
        "against",
        "file",
        "quantity",
        "order",
        "gainPercent",
        "frequency",
        "level",
        "setting",
        "value",
        "unit",
        "expandedUncertainty",
        "limit",
        "decision",
        "reason"
    };

    private final CSVPrinter out;

    private ResultsCsv(CSVPrinter out) {
        this.out = out;
    }

    /** The table as UTF-8, RFC 4180 with line feeds, decimal points whatever the report's language. */
    public static byte[] bytes(JobResults results) {
        StringBuilder text = new StringBuilder();
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader(COLUMNS)
                .setRecordSeparator('\n')
                .get();
        try (CSVPrinter printer = new CSVPrinter(text, format)) {
            new ResultsCsv(printer).write(results);
        } catch (IOException impossible) { // a string builder takes everything
            throw new UncheckedIOException(impossible);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Whether a file that begins so is such a table, of whatever version: the header tells, for earlier ones have no row with the digest. */
    public static boolean isHead(String text) {
        return text.startsWith(String.join(",", COLUMNS) + "\n");
    }

    private void write(JobResults results) throws IOException {
        row(
                new Subject("report", "", "", "", Condition.NONE),
                "inputsDigest",
                "",
                "",
                "",
                "",
                "",
                "",
                results.inputsDigest());
        for (CaptureResult c : results.captures()) {
            capture(c);
        }
        for (Series s : results.series()) {
            series(s);
        }
        for (Comparison c : results.comparisons()) {
            comparison(c);
        }
        devices(results.devices());
        for (StateNoise n : results.noise()) {
            noise(n);
        }
        for (StateResponse r : results.responses()) {
            response(r);
        }
        for (RailResult rail : new RailJudge(results.job().sheet()).all()) {
            rail(rail);
        }
    }

    private void response(StateResponse r) throws IOException {
        Condition c = r.condition();
        for (ResponsePoint p : r.curve().points()) {
            Condition at = new Condition(c.gainPercent(), OptionalDouble.of(p.frequency()), c.level(), c.setting());
            Subject subject = new Subject("response", r.state(), "", "", at);
            row(subject, "gain", "", p.gain());
            row(subject, "phase", "", p.phase());
        }
        Subject whole = new Subject("response", r.state(), "", "", c);
        row(whole, "lowerCorner", "", r.curve().lowerCorner());
        row(whole, "upperCorner", "", r.curve().upperCorner());
    }

    private void noise(StateNoise n) throws IOException {
        Subject subject = new Subject("noise", n.state(), "", "", n.condition());
        for (Map.Entry<NoiseFigure, Measured> e : n.values().entrySet()) {
            row(subject, e.getKey().key(), "", e.getValue());
        }
        for (Map.Entry<NoiseFigure, Measured> e : n.atInput().entrySet()) {
            row(subject, NoiseJson.atInput(e.getKey()), "", e.getValue());
        }
        for (HumLine line : n.hum()) {
            Condition at = new Condition(
                    n.condition().gainPercent(),
                    OptionalDouble.of(line.frequency()),
                    n.condition().level(),
                    n.condition().setting());
            row(new Subject("noise", n.state(), "", "", at), "hum", Integer.toString(line.order()), line.level());
        }
    }

    private void rail(RailResult rail) throws IOException {
        Measured.Value reading = rail.reading();
        row(
                new Subject("rail", rail.state(), "", "", Condition.NONE),
                rail.name(),
                "",
                plain(reading.number()),
                reading.unit().symbol(),
                plain(reading.expanded()),
                plain(rail.limit()) + " %",
                rail.decision().code(),
                clause(rail.deviation().reason()));
    }

    private void devices(Devices devices) throws IOException {
        for (TracedDevice d : devices.traced()) {
            Subject subject = new Subject(
                    "junction", d.row().state().orElse(""), "", d.row().file(), Condition.NONE);
            for (Map.Entry<String, Measured> e : DeviceRows.of(d).entrySet()) {
                row(subject, e.getKey(), "", e.getValue());
            }
        }
        for (MatchedPair p : devices.pairing().pairs()) {
            Subject subject = new Subject("pair", "", "", "", Condition.NONE);
            String names = String.join(" ", p.devices());
            row(subject, names + " mismatch", "", p.mismatch());
            row(subject, names + " mismatchAt1mA", "", p.mismatchAt1mA());
        }
        for (StatePrediction s : devices.predictions()) {
            Subject subject = new Subject("prediction", s.state(), "", "", s.condition());
            for (Prediction p : s.figures()) {
                String order =
                        p.order().isPresent() ? Integer.toString(p.order().getAsInt()) : "";
                row(subject, "predicted " + p.quantity(), order, p.predicted());
                row(subject, "measured " + p.quantity(), order, p.measured());
            }
        }
    }

    private void capture(CaptureResult c) throws IOException {
        Subject subject = new Subject(
                "capture",
                c.row().state().orElse(""),
                "",
                c.row().file(),
                c.row().condition());
        Map<WaveformQuantity, Measured> values =
                c.waveform().map(WaveformResult::values).orElse(Map.of());
        for (Map.Entry<WaveformQuantity, Measured> e : values.entrySet()) {
            row(subject, e.getKey().key(), "", e.getValue());
        }
        for (Map.Entry<ListeningFigure, Measured> e :
                c.listening().map(ListeningResult::values).orElse(Map.of()).entrySet()) {
            row(subject, e.getKey().key(), "", e.getValue());
        }
        for (Harmonic h : c.waveform().map(WaveformResult::harmonics).orElse(List.of())) {
            row(subject, "harmonic", Integer.toString(h.order()), h.level());
        }
    }

    private void series(Series s) throws IOException {
        Subject subject = new Subject("series", s.state(), "", "", s.condition());
        for (OnsetGain o : s.onsetGain()) {
            row(subject, "onsetGain thd " + plain(o.thdPercent()) + " %", "", o.gainPercent());
        }
        for (LevelSeries l : s.levelSeries()) {
            Condition at = new Condition(
                    l.gainPercent(),
                    s.condition().frequency(),
                    OptionalDouble.empty(),
                    s.condition().setting());
            row(new Subject("series", s.state(), "", "", at), "compressionPoint", "", l.compressionPoint());
        }
    }

    private void comparison(Comparison c) throws IOException {
        Subject whole = new Subject("comparison", c.to(), c.from(), "", Condition.NONE);
        row(whole, "verdict", "", "", "", "", "", c.verdict().code(), clause(c.reason()));
        for (NotExamined n : c.notExamined()) {
            row(whole, n.quantity().key(), "", "", "", "", "", "not examined", clause(Optional.of(n.reason())));
        }
        for (Item i : c.items()) {
            item(new Subject("comparison", c.to(), c.from(), "", i.condition()), i);
        }
        for (LevelMatchedHarmonic h : c.levelMatched()) {
            row(
                    new Subject("level-matched", c.to(), c.from(), "", h.condition()),
                    "harmonic",
                    Integer.toString(h.order()),
                    h.change());
        }
        for (EquivalentGain e : c.equivalentGain()) {
            Condition at = new Condition(
                    OptionalDouble.of(e.fromGainPercent()),
                    e.condition().frequency(),
                    e.condition().level(),
                    e.condition().setting());
            row(new Subject("comparison", c.to(), c.from(), "", at), "equivalentGain", "", e.toGainPercent());
        }
    }

    private void item(Subject subject, Item i) throws IOException {
        row(
                subject,
                i.quantity().key(),
                "",
                plain(i.change().value()),
                i.change().unit().symbol(),
                plain(i.change().expandedUncertainty()),
                plain(i.limit()),
                i.decision().code(),
                reason(i));
    }

    private static String reason(Item item) {
        return Stream.of(
                        item.subject().map(ItemSubject::key),
                        bound(item.change()),
                        Speech.ENGLISH.clause(item.change().reason()).or(() -> Speech.ENGLISH.text(item.remedy())))
                .flatMap(Optional::stream)
                .collect(Collectors.joining("; "));
    }

    private static String clause(Optional<Reason> reason) {
        return Speech.ENGLISH.clause(reason).orElse("");
    }

    private static Optional<String> bound(Measured m) {
        return m.asValue().filter(Measured.Value::isUpperBound).map(v -> "upper bound");
    }

    private void row(Subject subject, String quantity, String order, Measured m) throws IOException {
        row(
                subject,
                quantity,
                order,
                plain(m.value()),
                m.unit().symbol(),
                plain(m.expandedUncertainty()),
                "",
                "",
                Speech.ENGLISH.clause(m.reason()).or(() -> bound(m)).orElse(""));
    }

    private void row(
            Subject subject,
            String quantity,
            String order,
            String value,
            String unit,
            String uncertainty,
            String limit,
            String decision,
            String reason)
            throws IOException {
        Condition c = subject.condition;
        out.printRecord(Stream.of(
                        subject.section,
                        subject.state,
                        subject.against,
                        subject.file,
                        quantity,
                        order,
                        plain(c.gainPercent()),
                        plain(c.frequency()),
                        plain(c.level()),
                        c.setting().orElse(""),
                        value,
                        unit,
                        uncertainty,
                        limit,
                        decision,
                        reason)
                .map(SpreadsheetCell::harmless));
    }

    private static String plain(double value) {
        return Double.toString(value + 0.0);
    }

    private static String plain(OptionalDouble value) {
        return value.isPresent() ? plain(value.getAsDouble()) : "";
    }

    /** What a row is about. */
    private record Subject(String section, String state, String against, String file, Condition condition) {}
}
