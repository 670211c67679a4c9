package clipwitness.job.read;

import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.job.Bench;
import clipwitness.job.Clipper;
import clipwitness.job.Instrument;
import clipwitness.job.Job;
import clipwitness.job.JobSheet;
import clipwitness.job.Limits;
import clipwitness.job.Photo;
import clipwitness.job.Rail;
import clipwitness.job.ReportInfo;
import clipwitness.job.Shop;
import clipwitness.job.Stimulus;
import clipwitness.job.UnitUnderTest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a job sheet. */
final class SheetReader {
    private final JobFiles files;

    /** Reads sheets that name files of this folder. */
    SheetReader(JobFiles files) {
        this.files = files;
    }

    /**
     * What a sheet says.
     *
     * @param sheet the sheet, or nothing where it has no usable report number and date; fit for use if there are no faults
     * @param terms what the captures table may refer to
     */
    record Outcome(Optional<JobSheet> sheet, Terms terms) {}

    /**
     * What the captures table may refer to.
     *
     * @param states      names of the states; empty where the sheet has none that can be read
     * @param settings    names of the settings, the first being the default
     * @param stimulus    stimulus of every capture that names no other
     * @param instruments instruments of the bench
     * @param open        states in lines that are commented out
     */
    record Terms(
            List<String> states,
            List<String> settings,
            Stimulus stimulus,
            List<Instrument> instruments,
            OpenStates open) {}

    /**
     * Reads the text of a sheet.
     *
     * @param text   the text
     * @param faults takes everything that is wrong
     * @throws InputException if the text is no YAML, or no sheet at all
     */
    Outcome read(String text, Faults faults) throws InputException {
        YamlNode.Mapping root = YamlTree.of(Job.SHEET_FILE, text, faults);
        OpenStates open = new OpenStates(text);
        return Section.read(new SheetNode(root, Origin.of(Job.SHEET_FILE, root.line()), faults), s -> sheet(s, open));
    }

    private Outcome sheet(Section root, OpenStates open) {
        Optional<ReportInfo> report = root.section("report", ReportSection::read);
        Shop shop = root.section("shop", this::shop);
        String customer = root.text("customer");
        UnitUnderTest unit = root.section("unit", SheetReader::unit);
        String work = root.lines("work");
        Bench bench = root.section("bench", BenchSection::read);
        Stimulus stimulus = root.section("stimulus", SheetReader::stimulus);
        Map<String, String> settings = root.section("settings", SheetReader::settings);
        StatesSection states = root.section(
                "states",
                s -> new StatesSection(s, report.map(ReportInfo::language).orElse("")));
        List<String> names = states.names();
        Limits limits = root.section("limits", LimitsSection::read);
        List<Rail> rails = RailsSection.read(root, names);
        Optional<Clipper> clipper =
                root.node("clipper").flatMap(n -> Section.read(n, s -> ClipperSection.read(s, names)));
        List<Photo> photos = photos(root, names, files);
        return new Outcome(
                report.map(r -> new JobSheet(
                        r,
                        shop,
                        customer,
                        unit,
                        work,
                        bench,
                        stimulus,
                        settings,
                        states.states(),
                        limits,
                        rails,
                        clipper,
                        photos)),
                new Terms(names, List.copyOf(settings.keySet()), stimulus, bench.instruments(), open));
    }

    private Shop shop(Section section) {
        return new Shop(
                section.text("name"),
                section.text("contact"),
                section.node("logo").flatMap(SheetNode::path).flatMap(files::picture),
                section.text("technician"));
    }

    private static UnitUnderTest unit(Section section) {
        return new UnitUnderTest(
                section.text("name"), section.text("maker"), section.text("serial"), section.text("supply"));
    }

    private static Stimulus stimulus(Section section) {
        String shape = section.field("shape").map(Field::text).orElse(Stimulus.SINE);
        String folded = shape.equalsIgnoreCase(Stimulus.SINE) ? Stimulus.SINE : shape;
        OptionalDouble frequency = section.field("frequency")
                .map(f -> f.number(AllowedRange.FREQUENCY))
                .orElse(OptionalDouble.empty());
        OptionalDouble level = section.field("level")
                .map(f -> PeakLevel.of(f, AllowedRange.LEVEL, folded))
                .orElse(OptionalDouble.empty());
        return new Stimulus(folded, frequency, level);
    }

    private static Map<String, String> settings(Section section) {
        Map<String, String> settings = new LinkedHashMap<>();
        section.values().forEach((name, node) -> {
            NameWords.check(node, name, "setting");
            settings.put(
                    name,
                    node.node().isNull() ? "" : node.text().map(Field::text).orElse(""));
        });
        return settings;
    }

    private static List<Photo> photos(Section sheet, List<String> states, JobFiles files) {
        List<Photo> photos = new ArrayList<>();
        for (SheetNode node : sheet.items("photos")) {
            Section.read(node, section -> photo(section, states, files)).ifPresent(photos::add);
        }
        return photos;
    }

    private static Optional<Photo> photo(Section section, List<String> states, JobFiles files) {
        Optional<String> file = section.required("file", "Write for example file: photos/board.jpg")
                .flatMap(f -> section.node("file"))
                .flatMap(SheetNode::path)
                .flatMap(files::picture);
        String caption = section.text("caption");
        Optional<String> state = section.field("state").flatMap(f -> f.oneOf(states, "state"));
        return file.map(f -> new Photo(f, caption, state));
    }
}
