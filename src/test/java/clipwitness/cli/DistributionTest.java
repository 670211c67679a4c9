package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

    /** What the shell itself offers after a beginning. */
    @ParameterizedTest
    @CsvSource({
        "re, report ready",
        "template '', bench customer",
        "look --u, --unit",
        "report --ch, --changed-only",
        "report --sign-, --sign-password-file"
    })
    @EnabledIf("hasBash")
    void theShellCompletes(String typed, String offered) throws Exception {
        made("manual.html");
        String script = "source " + "completion/clipwitness.bash; complete -p clipwitness >&2; compopt() { :; }; "
                + "COMP_WORDS=(clipwitness " + typed
                + "); COMP_CWORD=$((${#COMP_WORDS[@]} - 1)); _complete_clipwitness; "
                + "echo \"${COMPREPLY[*]}\"";
        Process bash = new ProcessBuilder("bash", "-c", script)
                .directory(temp.resolve("out").toFile())
                .redirectError(temp.resolve("err").toFile())
                .start();
        String printed = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(printed.strip().split("\\s+")).containsExactlyInAnyOrder(offered.split(" "));
        assertThat(temp.resolve("err")).hasContent("complete -o default -F _complete_clipwitness clipwitness");
    }

    static boolean hasBash() {
        return Files.isExecutable(Path.of("/bin/bash"));
    }
}
