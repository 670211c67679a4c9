package clipwitness.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.TypeConversionException;

/** A path of the command line. */
final class PathArgument {
    private PathArgument() {}

    /** The path; refused where it is empty, which would mean the working folder without anybody having said so, or is no name of a file. */
    static Path of(String text) {
        if (text.isBlank()) {
            throw new TypeConversionException("it is empty; name a file or a folder, the working folder is .");
        }
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new TypeConversionException("'" + text + "' cannot be the name of a file or folder");
        }
    }
}
