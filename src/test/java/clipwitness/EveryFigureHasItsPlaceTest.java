package clipwitness;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.TestRecord;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.words.WordBundle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A row of WaveformQuantity is not enough: the figure is also computed, named and defined. */
class EveryFigureHasItsPlaceTest {
    private static final Pattern METHOD_LINE = Pattern.compile("data-figures=\"([^\"]*)\"");
    private static final Pattern DEFINED = Pattern.compile("(?m)^\\| ((?:`\\w+`(?:, )?)+) \\| \\S");
    private static final Path METHOD_PAGE = Path.of("report-templates/bench/method.html");
    private static final Path DEFINITIONS = Path.of("src/site/markdown/measurements.md");

    private static final WordBundle WORDS = WordBundle.builtIn();

    @ParameterizedTest
    @EnumSource(WaveformQuantity.class)
    void theFigureHasItsWord(WaveformQuantity quantity) {
        assertThat(WORDS.has("value." + quantity.key())).isTrue();
    }

    @Test
    void theMethodPageOfTheReportDefinesEachFigure() throws IOException {
        assertThat(names(METHOD_PAGE, METHOD_LINE, " ")).containsExactlyInAnyOrderElementsOf(keys());
    }

    /** The table of definitions also names what is no figure of a waveform capture. */
    @Test
    void thePageOfDefinitionsDefinesEachFigure() throws IOException {
        assertThat(names(DEFINITIONS, DEFINED, "`, `|`")).containsAll(keys());
    }

    @Test
    void aCaptureWithAnInputGivesEachFigureOrTheReasonWhyNot() {
        WaveformResult result = WaveformMeasurement.of(
                TestRecord.of(TestRecord.SINE).noisy(1e-4, 0, 1).through(Math::tanh));
        assertThat(result.values().keySet()).containsExactlyInAnyOrder(WaveformQuantity.values());
    }

    @Test
    void eachPictureOverTheGainControlHasItsNameAndAxis() {
        assertThat(WaveformQuantity.pictures().keySet())
                .isNotEmpty()
                .allMatch(name -> WORDS.has("series.name." + name) && WORDS.has("axis.series." + name));
    }

    private static Set<String> keys() {
        return Arrays.stream(WaveformQuantity.values())
                .map(WaveformQuantity::key)
                .collect(Collectors.toSet());
    }

    private static Set<String> names(Path page, Pattern line, String between) throws IOException {
        Set<String> names = new HashSet<>();
        Matcher found = line.matcher(Files.readString(page));
        while (found.find()) {
            names.addAll(Arrays.asList(found.group(1).split(between, -1)));
        }
        return names;
    }
}
