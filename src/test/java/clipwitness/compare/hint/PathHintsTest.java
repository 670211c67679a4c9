package clipwitness.compare.hint;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.compare.SaidHint;
import clipwitness.compare.result.StatePrediction;
import clipwitness.fault.InputException;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Measurement book, sections 7 and 9: what the fit of a clipped and a clean path says, on fits stated outright. */
class PathHintsTest {
    /** A fit of the state before: 0.4 % of the swing remains, the clipped path comes with the devices' voltage. */
    private static final Fit BEFORE = new Fit(0.004, 5, 1, 0.005);

    @TempDir
    private Path folder;

    /**
     * One fit.
     *
     * @param overSwing   remainder over the swing
     * @param overNoise   remainder over the noise
     * @param clipped     scale of the clipped path
     * @param uncertainty its standard uncertainty
     */
    private record Fit(double overSwing, double overNoise, double clipped, double uncertainty) {
        StatePrediction of(String state, double gain) {
            return Predicted.at(state, gain)
                    .with(new StatePrediction.Paths(
                            ratio(20, 0.1),
                            ratio(clipped, uncertainty),
                            ratio(0.1, 0.001),
                            ratio(0.2, 0.002),
                            overSwing,
                            overNoise,
                            true));
        }
    }

    private static Measured ratio(double value, double uncertainty) {
        return Measured.withNoise(value, Unit.ONE, uncertainty);
    }

    private static Fit remains(double overSwing, double overNoise) {
        return new Fit(overSwing, overNoise, 1, 0.005);
    }

    private static Fit scaled(double clipped, double relative) {
        return new Fit(0.004, 5, clipped, relative * Math.abs(clipped));
    }

    private Optional<SaidHint> hint(Fit before, Fit now) throws IOException, InputException {
        return Predicted.hints(new LegMismatch(), folder, before.of("before", 100), now.of("new", 100)).stream()
                .findFirst();
    }

    @Test
    void aWaveThatBothPathsDoNotExplainIsNamedWithWhatRemains() throws IOException, InputException {
        assertThat(hint(BEFORE, remains(0.05, 10)))
                .contains(new SaidHint(
                        "leg-mismatch",
                        Optional.of("new"),
                        "New pair: the wave is not one that the traced devices make beside a clean path. Look for other "
                                + "devices than the traced ones, an open leg, a reversed device, or a trace made while warm.",
                        "at full gain 5.0 % of the wave remains unexplained, before 0.40 %"));
    }

    /** The remainder counts from 1.5 % of the swing, from three times the noise and from three times that of before. */
    @Test
    void aRemainderCountsBeyondOneAndAHalfPercentNoiseAndThatOfBefore() throws IOException, InputException {
        assertThat(hint(BEFORE, remains(0.0149, 10))).isEmpty();
        assertThat(hint(BEFORE, remains(0.0151, 10))).isPresent();
        assertThat(hint(BEFORE, remains(0.05, 2.9))).isEmpty();
        assertThat(hint(BEFORE, remains(0.05, 3.1))).isPresent();
        assertThat(hint(remains(0.014, 5), remains(0.041, 10))).isEmpty();
        assertThat(hint(remains(0.014, 5), remains(0.043, 10))).isPresent();
    }

    @Test
    void whereTheFitOfBeforeLeavesAsMuchNothingIsSaid() throws IOException, InputException {
        assertThat(hint(remains(0.016, 5), remains(0.2, 50))).isEmpty();
    }

    @Test
    void aClippedPathThatComesHigherOrLowerIsNamedWithItsScale() throws IOException, InputException {
        assertThat(hint(BEFORE, scaled(1.3, 0.005)))
                .contains(new SaidHint(
                        "leg-mismatch",
                        Optional.of("new"),
                        "New pair: the clipped path clips higher than the traced devices make it beside a clean path. "
                                + "Look for other devices than the traced ones, an open leg, a reversed device, or a trace made "
                                + "while warm.",
                        "at full gain the clipped path has 1.3 of the devices' voltage, before 1.0"));
        assertThat(hint(BEFORE, scaled(0.75, 0.005)))
                .map(SaidHint::text)
                .hasValueSatisfying(t -> assertThat(t).contains("the clipped path clips lower than"));
    }

    /** A quarter more, and one and a half times the expanded uncertainty: 10 % each are 28 % expanded, 42 % with the half again. */
    @Test
    void aScaleCountsFromAQuarterAndBeyondItsUncertainty() throws IOException, InputException {
        assertThat(hint(BEFORE, scaled(1.24, 0.005))).isEmpty();
        assertThat(hint(BEFORE, scaled(1.26, 0.005))).isPresent();
        assertThat(hint(scaled(1, 0.1), scaled(1.5, 0.1))).isEmpty();
        assertThat(hint(scaled(1, 0.1), scaled(1.55, 0.1))).isPresent();
        assertThat(hint(BEFORE, scaled(-1.5, 0.005))).isEmpty();
    }

    /** 0.65 of the devices' voltage is 1.3 times 0.5, and 1.5 is three quarters of 2. */
    @Test
    void aScaleIsComparedWithThatOfBefore() throws IOException, InputException {
        assertThat(hint(scaled(0.5, 0.005), scaled(0.65, 0.005)))
                .map(SaidHint::text)
                .hasValueSatisfying(t -> assertThat(t).contains("the clipped path clips higher than"));
        assertThat(hint(scaled(2, 0.005), scaled(1.5, 0.005)))
                .map(SaidHint::text)
                .hasValueSatisfying(t -> assertThat(t).contains("the clipped path clips lower than"));
        assertThat(hint(scaled(2, 0.005), scaled(2.2, 0.005))).isEmpty();
    }

    @Test
    void aScaleHasToMoveInOneDirectionAtBothSettings() throws IOException, InputException {
        assertThat(Predicted.hints(
                        new LegMismatch(),
                        folder,
                        BEFORE.of("before", 75),
                        BEFORE.of("before", 100),
                        scaled(1.4, 0.005).of("new", 75),
                        scaled(0.7, 0.005).of("new", 100)))
                .isEmpty();
        assertThat(Predicted.hints(
                        new LegMismatch(),
                        folder,
                        BEFORE.of("before", 75),
                        BEFORE.of("before", 100),
                        scaled(1.4, 0.005).of("new", 75),
                        scaled(1.5, 0.005).of("new", 100)))
                .extracting(SaidHint::evidence)
                .containsExactly("at full gain the clipped path has 1.5 of the devices' voltage, before 1.0");
    }

    private static StatePrediction shown(String state, double gain, double share, boolean stated) {
        return Predicted.at(state, gain)
                .with(new StatePrediction.Paths(
                        ratio(20, 0.1), ratio(1, 0.01), ratio(0.1, 0.001), ratio(share, 0.01), 0.0042, 1.3, stated));
    }

    @Test
    void aCleanPathThatTheSheetDoesNotNameIsOneHintWhereItIsClearest() throws IOException, InputException {
        assertThat(Predicted.hints(
                        new CleanPath(),
                        folder,
                        shown("before", 100, 0.12, false),
                        shown("new", 50, 0.35, false),
                        shown("new", 100, 0.15, false)))
                .containsExactly(new SaidHint(
                        "clean-path",
                        Optional.empty(),
                        "As it came and new pair: a part of the signal goes round the clipper, which the sheet does not "
                                + "say. If the circuit has such a path, write clean-path: true under clipper.",
                        "at 50\u00A0% gain a clean share of 35 % (± 2.0 %) leaves 0.42 % of the wave"
                                + " unexplained, under a fifth of what the devices alone leave"));
    }

    @Test
    void aCleanPathOfOneStateNamesIt() throws IOException, InputException {
        assertThat(Predicted.hints(new CleanPath(), folder, shown("new", 50, 0.35, false), Predicted.at("before", 50)))
                .extracting(SaidHint::state)
                .containsExactly(Optional.of("new"));
    }

    @Test
    void aCleanPathThatTheSheetNamesIsNoHint() throws IOException, InputException {
        assertThat(Predicted.hints(new CleanPath(), folder, shown("new", 50, 0.35, true)))
                .isEmpty();
    }
}
