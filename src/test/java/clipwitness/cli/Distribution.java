package clipwitness.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.AutoComplete;
import picocli.CommandLine;

/** Writes what the distribution holds beside the program: the manual as one page, shell completion, the manual page. */
public final class Distribution {
    private Distribution() {}

    /**
     * Writes the files.
     *
     * @param args folder of the manual's chapters, folder for the files, version of the program
     * @throws IOException if one cannot be read or written
     */
    public static void main(String[] args) throws IOException {
        Path out = Path.of(args[1]);
        CommandLine commands = commands();
        write(out.resolve("manual.html"), ManualPage.of(Path.of(args[0])));
        write(out.resolve("completion/clipwitness.bash"), AutoComplete.bash("clipwitness", commands));
        write(out.resolve("man/man1/clipwitness.1"), Roff.of(commands, args[2]));
    }

    /** The program's commands. */
    static CommandLine commands() {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        return new Clipwitness(nowhere, nowhere).commands();
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text.replace(System.lineSeparator(), "\n"), StandardCharsets.UTF_8);
    }
}
