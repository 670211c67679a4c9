package clipwitness.compare.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.compare.finding.Treble;
import clipwitness.compare.result.CaptureResult;
import clipwitness.fault.InputException;
import clipwitness.fixture.MadeUpQuiet;
import clipwitness.fixture.TestExamination;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Treble against 1 kHz: what became of the gain at 3 kHz and 6 kHz, on gains stated outright. */
class TrebleRuleTest {
    private static final double U = 0.03;

    @TempDir
    private Path folder;

    /** Gains at 1, 3 and 6 kHz, dB. */
    private static CaptureResult sweep(String state, double gain, double one, double three, double six) {
        return MadeUpQuiet.of(state)
                .gain(gain)
                .export(state + gain)
                .response(MadeUpQuiet.sweep(List.of(
                        MadeUpQuiet.point(1000, one, U),
                        MadeUpQuiet.point(3000, three, U),
                        MadeUpQuiet.point(6000, six, U))));
    }

    private List<Treble> treble(CaptureResult... captures) throws IOException, InputException {
        return Findings.of(new TestExamination(folder).examined("", List.of(captures))).all().stream()
                .filter(Treble.class::isInstance)
                .map(Treble.class::cast)
                .filter(t -> t.subject().later().equals("new"))
                .toList();
    }

    /** From -1 and -3 dB under 1 kHz to -2.5 and -6 dB: 1.5 and 3 dB less; four gains known to 0.03 dB make 0.06 dB. */
    @Test
    void lessAtThreeAndSixKilohertzAgainstOneIsDarker() throws IOException, InputException {
        List<Treble> found = treble(sweep("before", 50, 10, 9, 7), sweep("new", 50, 8, 5.5, 2));
        assertThat(found).hasSize(1);
        Treble treble = found.get(0);
        assertThat(treble.word()).isEqualTo("darker");
        assertThat(treble.parts()).extracting(Treble.Part::kilohertz).containsExactly(3, 6);
        assertThat(treble.parts().get(0).change().number()).isCloseTo(-1.5, within(1e-9));
        assertThat(treble.parts().get(1).change().number()).isCloseTo(-3, within(1e-9));
        assertThat(treble.parts().get(1).change().standardUncertainty()).isCloseTo(0.06, within(1e-6));
        assertThat(treble.largest().kilohertz()).isEqualTo(6);
        assertThat(treble.subject().condition().gainPercent()).hasValue(50);
    }

    @Test
    void moreIsBrighterAndOneOfTheTwoIsEnough() throws IOException, InputException {
        List<Treble> found = treble(sweep("before", 50, 10, 9, 7), sweep("new", 50, 10, 10.25, 7));
        assertThat(found).extracting(Treble::word).containsExactly("brighter");
        assertThat(found.get(0).largest().kilohertz()).isEqualTo(3);
    }

    /** One decibel is heard, less is not said. */
    @Test
    void underADecibelTheTrebleIsTheSame() throws IOException, InputException {
        assertThat(treble(sweep("before", 50, 10, 9, 7), sweep("new", 50, 10, 9.75, 7.75)))
                .extracting(Treble::word)
                .containsExactly("same");
        assertThat(treble(sweep("before", 50, 10, 9, 7), sweep("new", 50, 10, 9, 8)))
                .extracting(Treble::word)
                .containsExactly("brighter");
    }

    @Test
    void aChangeWithinItsUncertaintyIsNone() throws IOException, InputException {
        CaptureResult rough = MadeUpQuiet.of("new")
                .gain(50)
                .export("new")
                .response(
                        MadeUpQuiet.sweep(List.of(MadeUpQuiet.point(1000, 10, U), MadeUpQuiet.point(3000, 10.5, 0.8))));
        assertThat(treble(sweep("before", 50, 10, 9, 7), rough))
                .extracting(Treble::word)
                .containsExactly("same");
    }

    /** Only conditions that both states have are compared; the first one with figures is told. */
    @Test
    void unlikeConditionsAreNotCompared() throws IOException, InputException {
        assertThat(treble(sweep("before", 50, 10, 9, 7), sweep("new", 75, 10, 4, 2)))
                .isEmpty();
        assertThat(treble(
                        sweep("before", 50, 10, 9, 7),
                        sweep("before", 75, 10, 9, 7),
                        sweep("new", 75, 10, 4, 2),
                        sweep("old", 50, 10, 4, 2)))
                .extracting(t -> t.subject().condition().gainPercent().orElseThrow())
                .containsExactly(75.0);
    }

    @Test
    void withoutAGainAtOneKilohertzNothingIsSaid() throws IOException, InputException {
        CaptureResult high = MadeUpQuiet.of("new")
                .gain(50)
                .export("new")
                .response(MadeUpQuiet.sweep(List.of(MadeUpQuiet.point(3000, 1, U), MadeUpQuiet.point(6000, 1, U))));
        assertThat(treble(sweep("before", 50, 10, 9, 7), high)).isEmpty();
    }
}
