package clipwitness.reading;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fault.InputException;
import clipwitness.fixture.Said;
import clipwitness.reason.Doubt;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every doubt about a file, with its whole sentence. */
class DoubtTextTest {
    @TempDir
    private Path folder;

    @Test
    void aColumnWithoutNameThatRisesEvenlyIsTakenAsTime() throws IOException, InputException {
        assertThat(doubts("0.0,1.5\n0.00005,1.6\n0.0001,1.7\n"))
                .contains(
                        "warning unit-assumed: The file does not name its first column; it rises evenly and is taken as"
                                + " time in seconds. The column interval of captures.csv, or the option --interval of look,"
                                + " settles it. For a swept voltage the column unit or the option --unit does: V,A.");
    }

    @Test
    void aTimeWithoutUnitIsTakenAsSeconds() throws IOException, InputException {
        assertThat(doubts("time,CH1 (V)\n0.0,1.5\n0.5,1.6\n1.0,1.7\n"))
                .containsExactly(
                        "note unit-assumed: The file does not state the unit of its time stamps; seconds are"
                                + " assumed. The column interval of captures.csv, or the option --interval of look, settles it.");
    }

    @Test
    void valuesWithoutUnitStandAsTheyAreWritten() throws IOException, InputException {
        assertThat(doubts("time (s),CH1,CH2 (V)\n0.0,1.5,1\n0.5,1.6,2\n1.0,1.7,3\n"))
                .containsExactly(
                        "warning unit-assumed: The file does not state the unit of CH1; the values stand as they"
                                + " are written. The columns unit and scale of captures.csv, or the options --unit and --scale of"
                                + " look, settle it.");
    }

    @Test
    void gapsAreCountedAndAnEmptyChannelIsNamed() throws IOException, InputException {
        assertThat(doubts("time (s),CH1 (V),CH2 (V)\n0,1,****\n1,OL,****\n2,3,****\n3,4,****\n"))
                .containsExactly(
                        "refusal missing-samples: CH1 has 1 of 4 samples without a value (25 %): empty cells or overflow"
                                + " marks.",
                        "warning missing-samples: CH2 has no sample with a value and is left out.");
    }

    @Test
    void anExportThatIsCutOffIsToldWithBothCounts() throws IOException, InputException {
        assertThat(doubts("Points,12 k\ntime (s),CH1 (V)\n0,1\n1,2\n2,3\n3,4\n"))
                .containsExactly(
                        "warning missing-samples: The file states 12000 samples and holds 4: its end is missing, and the rest"
                                + " was read. Is the copy cut off? Export or copy it again.");
    }

    @Test
    void anIntervalThatTheTimeStampsContradictIsTold() throws IOException, InputException {
        assertThat(doubts("Sample interval,1.5\ntime (s),CH1 (V)\n0,1\n1,2\n2,3\n3,4\n"))
                .containsExactly(
                        "warning unit-assumed: The time stamps advance by 1.00000\u00a0s, but 'Sample interval' on line 1 gives"
                                + " 1.50000\u00a0s. One of them is wrong, and the time stamps are taken. The column interval of"
                                + " captures.csv, or the option --interval of look, settles it.");
        assertThat(doubts("Sample interval,0.25\ntime (s),CH1 (V)\n0,1\n1,2\n2,3\n3,4\n"))
                .containsExactly(
                        "note unit-assumed: The time stamps advance by 1.00000\u00a0s, but 'Sample interval' on line 1 gives"
                                + " 250.000\u00a0ms: the export holds one of every 4 samples, or one of the two is wrong. The time"
                                + " stamps are taken.");
    }

    @Test
    void aUnitThatTheHeadingsContradictIsToldOnce() throws IOException, InputException {
        assertThat(doubts("Vertical unit,mV\ntime (s),CH1 (V),CH2 (V)\n0,1,1\n1,2,2\n2,3,4\n"))
                .containsExactly(
                        "warning unit-assumed: The unit of CH1, CH2 is V by the heading and mV by the lines above it. One of"
                                + " them is wrong, and V is taken. The column unit of captures.csv, or the option --unit of look,"
                                + " settles it.");
    }

    @Test
    void twoRowsATimeStampAreAnEnvelope() throws IOException, InputException {
        assertThat(doubts("time (s),CH1 (V)\n0.0,-1\n0.0,1\n1.0,-2\n1.0,2\n2.0,-3\n2.0,3\n"))
                .containsExactly("refusal repeated-time: Every time stamp appears on two rows, the smallest and the"
                        + " largest value of an interval. This is an envelope (peak detect), and cannot be measured as a"
                        + " wave.");
    }

    @Test
    void aColumnOfMinimaBesideOneOfMaximaIsAnEnvelope() throws IOException, InputException {
        assertThat(doubts("time (s),Max CH1 (V),Min CH1 (V)\n0,1,-1\n1,2,-2\n2,3,-3\n"))
                .containsExactly(
                        "refusal repeated-time: Min CH1 and Max CH1 are the smallest and the largest value of each"
                                + " interval: this is the record of an envelope (peak detect). It cannot be measured as a wave.");
        assertThat(doubts("time (s),min (V),CH1 max (V)\n0,1,-1\n1,2,-2\n2,3,-3\n"))
                .isEmpty();
    }

    @Test
    void stampsRoundedToTheSameDigitAreCounted() throws IOException, InputException {
        assertThat(doubts("time (s),CH1 (V)\n0.0,1\n0.0,2\n0.1,3\n0.1,2\n0.2,1\n0.2,0\n0.2,1\n"))
                .contains(
                        "warning repeated-time: 4 of 7 time stamps repeat the one before: they are rounded. The sample"
                                + " interval of 39.2857\u00a0ms is the least-squares line through all.");
    }

    @Test
    void aStampOffTheGridIsMeasuredInIntervals() throws IOException, InputException {
        assertThat(doubts("time (s),CH1 (V)\n0.0,1\n1.0,2\n2.5,3\n3.0,2\n4.0,1\n"))
                .containsExactly("warning uneven-time: The samples are not evenly spaced: a stamp lies up to 0.40"
                        + " intervals off an even grid. The widest step comes after sample 2, from 1.0 to 2.5.");
    }

    @Test
    void anAcCoupledChannelIsNamed() throws IOException, InputException {
        assertThat(doubts("Trigger coupling,AC,AC\nCoupling,DC,AC\ntime (s),CH1 (V),CH2 (V)\n0,1,2\n1,2,3\n2,3,4\n"))
                .containsExactly("note ac-coupled: CH2 was AC coupled, as the preamble says: its mean is lost, and slow"
                        + " waves sag.");
    }

    @Test
    void couplingIsReadChannelByChannelToo() throws IOException, InputException {
        assertThat(doubts("CH1 Coupling,AC\nCH2 Coupling,DC\ntime (s),CH1 (V),CH2 (V)\n0,1,2\n1,2,3\n2,3,4\n"))
                .containsExactly("note ac-coupled: CH1 was AC coupled, as the preamble says: its mean is lost, and slow"
                        + " waves sag.");
    }

    private Iterable<String> doubts(String text) throws IOException, InputException {
        Path file = Files.writeString(folder.resolve("x.csv"), text);
        return ExportReader.read(file, "x.csv", ReadingOptions.none()).doubts().stream()
                .map(DoubtTextTest::text)
                .toList();
    }

    private static String text(Doubt doubt) {
        return doubt.severity().code() + " " + doubt.code().code() + ": " + Said.doubt(doubt);
    }
}
