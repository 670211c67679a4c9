package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** What is made of the commands and of the manual's chapters for the distribution. */
class DistributionTest {
    @TempDir
    private Path temp;

    private String made(String file) throws IOException {
        Path chapters = Files.createDirectory(temp.resolve("chapters"));
        Files.writeString(chapters.resolve("index.md"), "# Start\n\n[the sheet](sheet.md#keys), ![a dot](dot.png)\n");
        Files.writeString(chapters.resolve("first.md"), "# First\n");
        Files.writeString(chapters.resolve("sheet.md"), "# Sheet\n\n## Keys\n\n| a | b |\n|---|---|\n| 1 | < |\n");
        Files.write(chapters.resolve("dot.png"), new byte[] {1, 2, 3});
        Distribution.main(new String[] {chapters.toString(), temp.resolve("out").toString(), "1.2.3"});
        return Files.readString(temp.resolve("out").resolve(file));
    }

    @Test
    void theManualIsOnePageThatNeedsNothingBesideIt() throws IOException {
        String page = made("manual.html");
        assertThat(page).contains("href=\"#keys\"", "<h2 id=\"keys\">Keys</h2>", "<td>&lt;</td>");
        assertThat(page).contains("src=\"data:image/png;base64,AQID\"").doesNotContain(".md");
        assertThat(page).containsSubsequence("id=\"index\"", "id=\"sheet\"", "id=\"first\"");
    }

    @Test
    void theManualPageHasEveryCommandAndOption() throws IOException {
        String page = made("man/man1/clipwitness.1");
        assertThat(page).startsWith(".TH CLIPWITNESS 1 ").doesNotContain("${");
        for (CommandLine command : Distribution.commands().getSubcommands().values()) {
            assertThat(page).contains(".B clipwitness " + command.getCommandName() + "\n");
            command.getCommandSpec()
                    .options()
                    .forEach(o -> assertThat(page).contains(o.longestName().replace("-", "\\-")));
        }
    }

    @Test
    void theCompletionKnowsEveryCommandAndOption() throws IOException {
        String script = made("completion/clipwitness.bash");
        for (CommandLine command : Distribution.commands().getSubcommands().values()) {
            assertThat(script).contains(command.getCommandName());
            command.getCommandSpec().options().forEach(o -> assertThat(script).contains(o.longestName()));
        }
    }
}
