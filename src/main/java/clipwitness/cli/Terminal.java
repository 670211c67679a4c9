package clipwitness.cli;

import java.io.Console;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The terminal that the program runs on, if it runs on one. */
final class Terminal {
    /** Where its width is not known: that of every terminal at its start. */
    static final int USUAL_COLUMNS = 80;

    private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");
    private static final File DEVICE = new File("/dev/tty");
    private static final Pattern ROWS_AND_COLUMNS = Pattern.compile("\\d+ (\\d{1,4})\\s*");
    private static final int FEWEST_COLUMNS = 20;
    private static final int MOST_MILLISECONDS = 200;

    private Terminal() {}

    /** Whether what is printed to standard error appears on a terminal, as far as the system tells. */
    @SuppressWarnings("SystemConsoleNull") // where newer machines have a console without a terminal, it is asked
    static boolean shows() {
        Console console = System.console();
        return console != null && isTerminal(console) && !isRedirected();
    }

    /** From Java 22 on there can be a console without a terminal, and it says so. */
    private static boolean isTerminal(Console console) {
        try {
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (NoSuchMethodException e) {
            return true; // an earlier Java has a console on a terminal only
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }

    /** Whether standard error leads elsewhere than to the terminal. */
    private static boolean isRedirected() {
        try {
            return Files.exists(STANDARD_ERROR) && !STANDARD_ERROR.toRealPath().startsWith("/dev");
        } catch (IOException e) {
            return true; // a pipe has no path
        }
    }

    /** Its width as it is now, in characters. */
    static int columns() {
        if (!DEVICE.exists()) {
            return USUAL_COLUMNS;
        }
        try {
            Process size = new ProcessBuilder("stty", "size")
                    .redirectInput(DEVICE)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (!size.waitFor(MOST_MILLISECONDS, TimeUnit.MILLISECONDS)) {
                size.destroy();
                return USUAL_COLUMNS;
            }
            return columns(new String(size.getInputStream().readAllBytes(), StandardCharsets.US_ASCII));
        } catch (IOException e) {
            return USUAL_COLUMNS; // there is no such command
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return USUAL_COLUMNS;
        }
    }

    /** Columns of an answer {@code ROWS COLUMNS}. */
    static int columns(String answer) {
        Matcher size = ROWS_AND_COLUMNS.matcher(answer);
        int columns = size.matches() ? Integer.parseInt(size.group(1)) : 0;
        return columns >= FEWEST_COLUMNS ? columns : USUAL_COLUMNS;
    }
}
