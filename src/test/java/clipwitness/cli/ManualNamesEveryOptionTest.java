package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** The manual's chapter of the commands has each command with all of its options. */
class ManualNamesEveryOptionTest {
    @ParameterizedTest
    @MethodSource("commands")
    void aChapterNamesTheOptions(String name, CommandLine command) throws IOException {
        String page = Files.readString(Path.of("src/site/markdown/commands.md"));
        int begin = page.indexOf("\n## " + name + " ");
        assertThat(begin).isNotNegative();
        int end = page.indexOf("\n## ", begin + 1);
        String chapter = page.substring(begin, end < 0 ? page.length() : end);
        assertThat(command.getCommandSpec().options().stream()
                        .map(CommandLine.Model.OptionSpec::longestName)
                        .filter(o -> !o.equals("--help") && !o.equals("--version")))
                .allSatisfy(o -> assertThat(chapter).containsPattern("`" + o + "[ `]"));
    }

    static Stream<Object[]> commands() {
        return Distribution.commands().getSubcommands().entrySet().stream()
                .map((Map.Entry<String, CommandLine> e) -> new Object[] {e.getKey(), e.getValue()});
    }
}
