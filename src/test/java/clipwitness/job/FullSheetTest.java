package clipwitness.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import clipwitness.fault.InputException;
import clipwitness.fixture.TestJob;
import clipwitness.quantity.LimitQuantity;
import clipwitness.quantity.Quantity;
import clipwitness.quantity.Unit;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet with every key that there is; the values below were copied from it by hand. */
class FullSheetTest {
    @TempDir
    Path folder;

    private JobSheet sheet;

    @BeforeEach
    void read() throws IOException, InputException {
        TestJob job = TestJob.in(folder).table("file,state,kind\n");
        Files.createDirectory(folder.resolve("photos"));
        Files.write(
                folder.resolve("photos/board.jpg"), new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xe0});
        Files.write(folder.resolve("logo.png"), TestJob.png());
        try (InputStream in = FullSheetTest.class.getResourceAsStream("full-sheet.yaml")) {
            Files.write(folder.resolve("job.yaml"), in.readAllBytes());
        }
        sheet = job.read().sheet();
    }

    @Test
    void report() {
        assertThat(sheet.report())
                .isEqualTo(new ReportInfo(
                        "HL-0231",
                        "Asymmetric clipping switch for a bass overdrive",
                        LocalDate.of(2026, 5, 4),
                        Optional.of(LocalDate.of(2026, 4, 28)),
                        OptionalInt.of(1),
                        Optional.of("HL-0230"),
                        "bench",
                        "de",
                        Paper.LETTER,
                        EnumSet.of(Attachment.RESULTS, Attachment.CAPTURES)));
    }

    @Test
    void shopCustomerUnitAndWork() {
        assertThat(sheet.shop())
                .isEqualTo(new Shop("Harbour Lane Bench", "12 Harbour Lane", Optional.of("logo.png"), "T. Bench"));
        assertThat(sheet.customer()).isEqualTo("A customer");
        assertThat(sheet.unit()).isEqualTo(new UnitUnderTest("Bass overdrive", "A maker", "0042", "9 V"));
        assertThat(sheet.work()).isEqualTo("Added a switch.\nReplaced two diodes.");
    }

    @Test
    void bench() {
        Instrument scope = new Instrument(
                "scope",
                "two-channel oscilloscope",
                "S-1",
                Optional.of(LocalDate.of(2026, 1, 10)),
                OptionalInt.of(8),
                OptionalDouble.of(0.02));
        Instrument tracer = new Instrument(
                "component curve tracer", "", "", Optional.empty(), OptionalInt.empty(), OptionalDouble.empty());
        assertThat(sheet.bench())
                .isEqualTo(new Bench(
                        OptionalDouble.of(21),
                        OptionalDouble.of(50),
                        OptionalDouble.of(1e6),
                        OptionalDouble.of(0),
                        List.of(scope, tracer),
                        0.04,
                        0.001,
                        0.007));
    }

    @Test
    void stimulusAndSettings() {
        assertThat(sheet.stimulus()).isEqualTo(new Stimulus("sine", OptionalDouble.of(1000), OptionalDouble.of(0.1)));
        assertThat(sheet.settings())
                .containsExactly(
                        entry("noon", "tone and volume at noon, tight switch off"), entry("bright", "tone up"));
    }

    @Test
    void states() {
        assertThat(sheet.states())
                .containsExactly(
                        new State("received", "As received", "received", Role.BEFORE, Optional.empty(), List.of()),
                        new State(
                                "warm",
                                "As received, warm",
                                "warm",
                                Role.BEFORE,
                                Optional.empty(),
                                List.of("received")),
                        new State("fault", "fault", Role.SHOWN, Optional.empty(), List.of()),
                        new State(
                                "original",
                                "After, original clippers",
                                Role.UNCHANGED,
                                Optional.of("received"),
                                List.of()),
                        new State(
                                "new",
                                "After, new clippers",
                                Role.CHANGED,
                                Optional.of("warm"),
                                List.of("original", "received")));
    }

    @Test
    void limits() {
        assertThat(sheet.limits().onSheet())
                .containsOnly(
                        entry(LimitQuantity.LEVEL, 0.6),
                        entry(LimitQuantity.THD, 1.1),
                        entry(LimitQuantity.ASYMMETRY, 3.0),
                        entry(LimitQuantity.CREST_FACTOR, 0.4),
                        entry(LimitQuantity.NULL_DEPTH, -31.0),
                        entry(LimitQuantity.NOISE, 2.5),
                        entry(LimitQuantity.HUM, 3.5),
                        entry(LimitQuantity.RESPONSE, 0.7),
                        entry(LimitQuantity.RAIL, 2.1));
    }

    @Test
    void railsAndReadingsAreOneList() {
        assertThat(sheet.rails())
                .containsExactly(
                        new Rail(
                                "boosted positive rail",
                                Optional.of(new Quantity(16, Unit.VOLT)),
                                OptionalDouble.empty(),
                                Map.of(
                                        "received", new RailReading(new Quantity(16.1, Unit.VOLT), 0.1),
                                        "original", new RailReading(new Quantity(16, Unit.VOLT), 0.01))),
                        new Rail(
                                "supply current",
                                Optional.of(new Quantity(0.008, Unit.AMPERE)),
                                OptionalDouble.of(0.2),
                                Map.of("received", new RailReading(new Quantity(0.0081, Unit.AMPERE), 0.0001))),
                        new Rail(
                                "current gain",
                                Optional.empty(),
                                OptionalDouble.empty(),
                                Map.of("new", new RailReading(new Quantity(350, Unit.ONE), 1))));
    }

    @Test
    void clipper() {
        assertThat(sheet.clipper())
                .contains(new Clipper(
                        Clipper.Topology.SHUNT,
                        OptionalDouble.of(1000),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Clipper.GainControl.SERIES,
                        OptionalDouble.of(0.71),
                        Optional.of("fault"),
                        true,
                        Map.of(
                                "received", new ClipperPair(new Leg(List.of("D1")), new Leg(List.of("D2"))),
                                "new", new ClipperPair(new Leg(List.of("Q1")), new Leg(List.of("Q2", "Q3"))),
                                "original", new ClipperPair(new Leg(List.of("D1")), new Leg(List.of())))));
    }

    @Test
    void photos() {
        assertThat(sheet.photos())
                .containsExactly(
                        new Photo("photos/board.jpg", "The board", Optional.of("original")),
                        new Photo("photos/board.jpg", "", Optional.empty()));
    }
}
