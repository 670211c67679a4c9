package clipwitness.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.figure.canvas.StateStyle;
import clipwitness.job.Role;
import clipwitness.job.State;
import java.awt.Color;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class StatePaletteTest {
    private static final List<StateStyle> SIX = styles(6);

    private static List<StateStyle> styles(int count) {
        List<State> states = IntStream.range(0, count)
                .mapToObj(i -> new State("s" + i, "State " + i, Role.SHOWN, Optional.empty(), List.of()))
                .toList();
        StatePalette palette = StatePalette.of(states);
        return states.stream().map(s -> palette.of(s.name())).toList();
    }

    /** WCAG 2.2, 1.4.11: graphics need a contrast of 3 to 1 against what is beside them. */
    @Test
    void everyColourHasAContrastOfThreeOnWhite() {
        assertThat(SIX)
                .allSatisfy(
                        s -> assertThat(1.05 / (luminance(s.color()) + 0.05)).isGreaterThan(3));
    }

    /** CIE 1976 lightness: ten steps are told apart at a glance, even in grey. */
    @Test
    void theFirstThreeStatesDifferInGreyByFifteenStepsOfLightness() {
        double[] lightness = SIX.stream()
                .limit(3)
                .mapToDouble(s -> lightness(s.color()))
                .sorted()
                .toArray();
        assertThat(lightness[1] - lightness[0]).isGreaterThan(15);
        assertThat(lightness[2] - lightness[1]).isGreaterThan(15);
    }

    @Test
    void sixStatesDifferInGrey() {
        double[] lightness =
                SIX.stream().mapToDouble(s -> lightness(s.color())).sorted().toArray();
        for (int i = 1; i < lightness.length; i++) {
            assertThat(lightness[i] - lightness[i - 1]).isGreaterThan(6);
        }
    }

    /** Colour vision without red cones (protan) and without green cones (deutan), after Viénot, Brettel and Mollon 1999. */
    @Test
    void neighbouringStatesDifferForTheColourBlind() {
        double[][] protan = {{0.1124, 0.8876, 0}, {0.1124, 0.8876, 0}, {0.004, -0.004, 1}};
        double[][] deutan = {{0.2927, 0.7073, 0}, {0.2927, 0.7073, 0}, {-0.0223, 0.0223, 1}};
        for (double[][] eye : List.of(protan, deutan)) {
            for (int i = 1; i < SIX.size(); i++) {
                double[] a = seen(SIX.get(i - 1).color(), eye);
                double[] b = seen(SIX.get(i).color(), eye);
                assertThat(Math.sqrt(IntStream.range(0, 3)
                                .mapToDouble(c -> Math.pow(a[c] - b[c], 2))
                                .sum()))
                        .isGreaterThan(0.1);
            }
        }
    }

    @Test
    void everyStateHasALineAndAMarkerOfItsOwn() {
        assertThat(SIX)
                .extracting(s -> Arrays.toString(s.line().getDashArray()))
                .doesNotHaveDuplicates();
        assertThat(SIX).extracting(StateStyle::marker).doesNotHaveDuplicates();
    }

    @Test
    void twelveStatesNeverShareColourAndLine() {
        assertThat(styles(12))
                .extracting(s -> s.color() + Arrays.toString(s.line().getDashArray()) + s.marker())
                .doesNotHaveDuplicates();
    }

    @Test
    void anUnknownStateIsOurMistake() {
        assertThatThrownBy(() -> StatePalette.of(List.of()).of("nobody")).isInstanceOf(IllegalArgumentException.class);
    }

    private static double[] linear(Color color) {
        return color.getRGBColorComponents(null) == null
                ? new double[0]
                : IntStream.range(0, 3)
                        .mapToDouble(i -> color.getRGBColorComponents(null)[i])
                        .map(v -> v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4))
                        .toArray();
    }

    private static double[] seen(Color color, double[][] eye) {
        double[] rgb = linear(color);
        return Arrays.stream(eye)
                .mapToDouble(row -> row[0] * rgb[0] + row[1] * rgb[1] + row[2] * rgb[2])
                .map(v -> Math.cbrt(Math.max(0, v)))
                .toArray();
    }

    private static double luminance(Color color) {
        double[] rgb = linear(color);
        return 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
    }

    private static double lightness(Color color) {
        return 116 * Math.cbrt(luminance(color)) - 16;
    }
}
