package clipwitness.report;

import clipwitness.job.Attachment;
import clipwitness.job.Bench;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.job.Instrument;
import clipwitness.job.Job;
import clipwitness.job.JobSheet;
import clipwitness.job.LimitQuantity;
import clipwitness.job.Limits;
import clipwitness.job.Paper;
import clipwitness.job.Photo;
import clipwitness.job.ReportInfo;
import clipwitness.job.Role;
import clipwitness.job.Shop;
import clipwitness.job.State;
import clipwitness.job.Stimulus;
import clipwitness.job.UnitUnderTest;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The sheet of the invented job.
 *
 * @param folder   job folder
 * @param customer customer
 * @param work     what was done
 * @param paper    paper
 * @param language language
 * @param photos   photos
 */
public record ExampleSheet(
        Path folder, String customer, String work, Paper paper, String language, List<Photo> photos) {
    /** The plain sheet: no photos, A4, English. */
    public static ExampleSheet plain() {
        return new ExampleSheet(Path.of("job"), "A. Player", """
                Asymmetric clipping on a switch: in the up position the original pair stays in circuit, in the down position
                one leg is a series pair of germanium transistors joined base to collector.

                Joints of the gain control renewed, jacks cleaned.
                """, Paper.A4, "en", List.of());
    }

    /** The same with another customer. */
    public ExampleSheet forCustomer(String name) {
        return new ExampleSheet(folder, name, work, paper, language, photos);
    }

    /** The same with other work. */
    public ExampleSheet withWork(String text) {
        return new ExampleSheet(folder, customer, text, paper, language, photos);
    }

    /** The same on other paper. */
    public ExampleSheet on(Paper other) {
        return new ExampleSheet(folder, customer, work, other, language, photos);
    }

    /** The same in another language. */
    public ExampleSheet in(String other) {
        return new ExampleSheet(folder, customer, work, paper, other, photos);
    }

    /** The same in a folder with photos. */
    public ExampleSheet withPhotos(Path jobFolder, List<Photo> pictures) {
        return new ExampleSheet(jobFolder, customer, work, paper, language, pictures);
    }

    Job job(List<Double> gains) {
        List<CaptureRow> rows = new ArrayList<>();
        for (State state : states()) {
            for (double gain : gains) {
                rows.add(row(rows.size() + 2, state.name(), gain));
            }
        }
        return new Job(folder, sheet(), rows);
    }

    private JobSheet sheet() {
        Map<String, String> settings = new LinkedHashMap<>();
        settings.put("noon", "tone and volume at noon, tight switch off");
        return new JobSheet(
                new ReportInfo(
                        "HL-0231",
                        "Asymmetric clipping switch for a bass overdrive",
                        LocalDate.of(2026, 5, 4),
                        Optional.of(LocalDate.of(2026, 4, 28)),
                        OptionalInt.empty(),
                        Optional.empty(),
                        "customer",
                        language,
                        paper,
                        EnumSet.allOf(Attachment.class)),
                new Shop(
                        "Harbour Lane Bench",
                        "7 Harbour Lane, Port Example, bench@example.org",
                        Optional.empty(),
                        "R. Tech"),
                customer,
                new UnitUnderTest("Bass overdrive", "built from a kit", "0042", "9 V"),
                work,
                bench(),
                new Stimulus("sine", OptionalDouble.of(200), OptionalDouble.of(0.1)),
                settings,
                states(),
                new Limits(Map.of(LimitQuantity.LEVEL, 0.5)),
                List.of(),
                Optional.empty(),
                photos);
    }

    private static Bench bench() {
        return new Bench(
                OptionalDouble.of(21),
                OptionalDouble.of(50),
                OptionalDouble.of(1e6),
                OptionalDouble.empty(),
                List.of(
                        new Instrument(
                                "scope",
                                "two-channel oscilloscope",
                                "A-1187",
                                Optional.of(LocalDate.of(2026, 1, 10)),
                                OptionalInt.of(8),
                                OptionalDouble.of(0.03)),
                        new Instrument(
                                "generator",
                                "function generator",
                                "",
                                Optional.empty(),
                                OptionalInt.empty(),
                                OptionalDouble.empty())),
                Bench.DEFAULT_VERTICAL_ACCURACY,
                Bench.DEFAULT_KNOB_REPEATABILITY,
                Bench.DEFAULT_METER_ACCURACY);
    }

    private static List<State> states() {
        return List.of(
                new State("received", "As received", Role.BEFORE, Optional.empty(), List.of()),
                new State("original", "After, original clippers", Role.UNCHANGED, Optional.of("received"), List.of()),
                new State("new", "After, new clippers", Role.CHANGED, Optional.of("received"), List.of("original")));
    }

    private static CaptureRow row(int number, String state, double gain) {
        return new CaptureRow(
                number,
                "captures/" + state + "-g" + Math.round(gain) + ".csv",
                Optional.of(state),
                CaptureKind.WAVEFORM,
                ExampleJob.condition(gain),
                1,
                Optional.of("CH1"),
                Optional.of("CH2"),
                Optional.empty(),
                1,
                1,
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                gain == 100 ? "knob against its stop" : "");
    }
}
