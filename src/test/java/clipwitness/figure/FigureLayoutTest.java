package clipwitness.figure;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.figure.canvas.Box;
import clipwitness.figure.canvas.Figure;
import clipwitness.fixture.DemoJobs;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for every figure of every job, odd ones included (report.md: nothing overlaps, nothing is cut). */
class FigureLayoutTest {
    /** Widths of the text on A4 and on Letter with margins of 20 and 25 mm, in points. */
    private static final double[] FULL_WIDTHS = {453, 482, 499};

    /** The same and half a page. */
    private static final double[] WIDTHS = {453, 482, 499, 240};

    static Stream<Arguments> figures() {
        List<Arguments> all = new ArrayList<>();
        DemoJobs.all()
                .forEach((job, results) -> FigureCatalogue.of(results)
                        .all()
                        .forEach((name, figure) -> all.add(Arguments.of(job + " " + name, figure))));
        return all.stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void noTextIsCutAndNoTwoTextsOverlap(String name, Figure figure) {
        for (double width : figure instanceof DecisionFigure ? FULL_WIDTHS : WIDTHS) {
            double height = width * figure.aspect();
            RecordingCanvas canvas = new RecordingCanvas();
            figure.paint(canvas, width, height);
            Box page = new Box(0, 0, width, height).grown(0.01);
            List<RecordingCanvas.Written> texts = canvas.texts();
            assertThat(texts).as("texts at %s pt", width).isNotEmpty();
            assertThat(texts)
                    .as("cut at %s pt", width)
                    .filteredOn(t -> !page.contains(t.box()))
                    .isEmpty();
            assertThat(overlaps(texts)).as("overlapping at %s pt", width).isEmpty();
        }
    }

    private static List<String> overlaps(List<RecordingCanvas.Written> texts) {
        List<String> found = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (texts.get(i).box().overlaps(texts.get(j).box())) {
                    found.add(texts.get(j).text() + " / " + texts.get(i).text());
                }
            }
        }
        return found;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void titleIsAPhraseAndFindingASentence(String name, Figure figure) {
        assertThat(figure.title()).isNotBlank().doesNotEndWith(".");
        assertThat(figure.finding()).endsWith(".").doesNotContain("NaN", "Optional", "-");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void aFigureFitsOnAPage(String name, Figure figure) {
        assertThat(figure.aspect()).isBetween(0.05, 1.4);
    }

    @Test
    void minusIsTheTrueSign() {
        Figure cycles = figure("usual", "cycles-main");
        RecordingCanvas canvas = new RecordingCanvas();
        cycles.paint(canvas, 482, 482 * cycles.aspect());
        assertThat(canvas.texts())
                .extracting(RecordingCanvas.Written::text)
                .contains("−200")
                .noneMatch(t -> t.startsWith("-"));
    }

    private static Figure figure(String job, String name) {
        Map<String, Figure> all = FigureCatalogue.of(DemoJobs.all().get(job)).all();
        return all.get(name);
    }
}
