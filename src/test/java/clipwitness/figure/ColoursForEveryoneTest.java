package clipwitness.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clipwitness.figure.canvas.Ink;
import clipwitness.figure.canvas.StateStyle;
import clipwitness.job.Role;
import clipwitness.job.State;
import java.awt.Color;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Contrast of everything that is printed (WCAG 2.2), and colours as eyes with two kinds of cones see them. */
class ColoursForEveryoneTest {
    /** WCAG 2.2, 1.4.3: text. */
    private static final double OF_TEXT = 4.5;

    /** WCAG 2.2, 1.4.11: graphics. */
    private static final double OF_GRAPHICS = 3;

    /** Three times what is just noticed, 2.3 (M. Mahy, L. Van Eycken, A. Oosterlinck, Color Research and Application 19, 1994). */
    private static final double TOLD_APART = 3 * 2.3;

    private static final Pattern TEXT_COLOUR = Pattern.compile("(?<![a-z-])color: (#[0-9a-fA-F]{6})");
    private static final Pattern SIGN = Pattern.compile("\\.sign\\.[a-z]+ \\{ background-color: (#[0-9a-fA-F]{6})");
    private static final Color PAPER = Color.WHITE;

    private static List<StateStyle> states() {
        List<State> states = IntStream.range(0, 6)
                .mapToObj(i -> new State("s" + i, "State " + i, Role.SHOWN, Optional.empty(), List.of()))
                .toList();
        StatePalette palette = StatePalette.of(states);
        return states.stream().map(s -> palette.of(s.name())).toList();
    }

    /** Known contrasts: black 21, #777777 just under 4.5, white 1; L*a*b* of white and black are 100 apart in every eye. */
    @Test
    void contrastAndDifferenceOfKnownColours() {
        assertThat(ColourVision.contrastWithWhite(Color.BLACK)).isCloseTo(21, within(1e-9));
        assertThat(ColourVision.contrastWithWhite(new Color(0x777777))).isCloseTo(4.48, within(0.005));
        assertThat(ColourVision.contrastWithWhite(Color.WHITE)).isCloseTo(1, within(1e-9));
        assertThat(ColourVision.USUAL.difference(Color.BLACK, Color.WHITE)).isCloseTo(100, within(1e-3));
        assertThat(ColourVision.USUAL.difference(Color.RED, Color.GREEN)).isCloseTo(170.6, within(0.1));
    }

    /** Greys have the same colour for all eyes: each row of the simulation adds up to one. */
    @ParameterizedTest
    @EnumSource(ColourVision.class)
    void greysStayGreys(ColourVision eye) {
        assertThat(eye.difference(Color.BLACK, Color.WHITE)).isCloseTo(100, within(0.01));
    }

    static Stream<Path> sheets() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("report-templates"))) {
            return files.filter(f -> f.toString().endsWith(".css")).sorted().toList().stream();
        }
    }

    /** All text stands on white, but for the sign of a verdict, which is white on its colour. */
    @ParameterizedTest
    @MethodSource("sheets")
    void everyTextColourOfATemplateHasItsContrast(Path sheet) throws IOException {
        String css = Files.readString(sheet);
        List<Color> texts =
                colours(TEXT_COLOUR, css).filter(c -> !c.equals(PAPER)).toList();
        assertThat(Stream.concat(texts.stream(), colours(SIGN, css)))
                .allSatisfy(c -> assertThat(ColourVision.contrastWithWhite(c))
                        .as(c.toString())
                        .isGreaterThan(OF_TEXT));
    }

    private static Stream<Color> colours(Pattern pattern, String css) {
        return pattern.matcher(css).results().map(m -> Color.decode(m.group(1)));
    }

    @Test
    void textLinesAndVerdictsOfFiguresHaveTheirContrast() {
        assertThat(ColourVision.contrastWithWhite(Ink.TEXT)).isGreaterThan(OF_TEXT);
        assertThat(DecisionStyle.values())
                .allSatisfy(s ->
                        assertThat(ColourVision.contrastWithWhite(s.color())).isGreaterThan(OF_TEXT));
        assertThat(List.of(Ink.AXIS, Ink.LIMIT))
                .allSatisfy(c -> assertThat(ColourVision.contrastWithWhite(c)).isGreaterThan(OF_GRAPHICS));
        assertThat(states())
                .allSatisfy(s ->
                        assertThat(ColourVision.contrastWithWhite(s.color())).isGreaterThan(OF_GRAPHICS));
    }

    @ParameterizedTest
    @EnumSource(ColourVision.class)
    void anyTwoStatesDifferInColourForEveryEyeAndInTheirLines(ColourVision eye) {
        List<StateStyle> states = states();
        for (int i = 0; i < states.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(eye.difference(states.get(i).color(), states.get(j).color()))
                        .as("states %d and %d", j, i)
                        .isGreaterThan(TOLD_APART);
                assertThat(states.get(i).line().getDashArray())
                        .isNotEqualTo(states.get(j).line().getDashArray());
            }
        }
    }

    /** Verdicts have a sign and a word besides. */
    @ParameterizedTest
    @EnumSource(ColourVision.class)
    void verdictsDifferInColourForEveryEye(ColourVision eye) throws IOException {
        List<Color> signs = colours(SIGN, Files.readString(Path.of("report-templates/common/base.css")))
                .toList();
        List<Color> figures =
                Arrays.stream(DecisionStyle.values()).map(DecisionStyle::color).toList();
        assertThat(signs).hasSize(4);
        for (List<Color> verdicts : List.of(signs, figures)) {
            for (int i = 0; i < verdicts.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(eye.difference(verdicts.get(i), verdicts.get(j)))
                            .as("verdicts %d and %d", j, i)
                            .isGreaterThan(TOLD_APART);
                }
            }
        }
    }
}
