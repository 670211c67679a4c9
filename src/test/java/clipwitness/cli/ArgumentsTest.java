package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ArgumentsTest {
    @TempDir
    private Path temp;

    private final StringWriter err = new StringWriter();

    @Test
    void anEmptyNameIsRefusedAndDoesNotMeanTheWorkingFolder() {
        refused("(JOB): it is empty; name a file or a folder", "report", "");
        refused("option '--out': it is empty; name a file or a folder", "report", "job", "--out", "");
        refused("--template is empty; name a built-in template", "report", "job", "--template", "");
        refused("(FILE): it is empty; name a file or a folder", "look", "");
        refused("option '--out': it is empty", "pair", "a.csv", "--out", "");
        refused("option '--job': it is empty", "pair", "a.csv", "--job", "");
        refused("(JOB): it is empty", "ready", " ");
    }

    @Test
    void anUnknownOptionIsNamedAlsoWhereAnArgumentIsMissingBesideIt() {
        refused("Unknown option: '--nope'", "report", "--nope");
        refused("Unknown option: '--nope'", "look", "--nope");
        refused("Unknown option: '--nope'", "ready", "job", "--nope");
    }

    @Test
    void aNameThatNoFileCanHaveIsRefusedInWords() {
        refused("cannot be the name of a file or folder", "look", "a\0b");
        assertThat(err.toString()).doesNotContain("InvalidPathException");
    }

    @Test
    void aFileWhoseNameBeginsWithAnAtSignIsAFileAndNoListOfArguments() throws IOException {
        Path list = Files.writeString(temp.resolve("list"), "--help\n");
        refused("@" + list + ": there is no such file", "look", "@" + list);
    }

    @Test
    void aMissingSheetIsMissedInAFolderThatIsNamed() {
        refused("there is no such file in the job folder " + temp, "ready", temp.toString());
    }

    private void refused(String message, String... args) {
        err.getBuffer().setLength(0);
        int status = new Clipwitness(new PrintWriter(new StringWriter()), new PrintWriter(err, true)).run(args);
        assertThat(status).as(String.join(" ", args)).isEqualTo(2);
        assertThat(err.toString()).as(String.join(" ", args)).contains(message).doesNotContain("null");
    }
}
