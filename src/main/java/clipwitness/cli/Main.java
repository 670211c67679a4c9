package clipwitness.cli;

import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Entry point of the command line. */
public final class Main {
    private Main() {}

    /**
     * Runs one command and leaves with its exit status.
     *
     * @param args the command line
     */
    public static void main(String[] args) {
        System.setProperty("java.awt.headless", "true"); // pictures are drawn in memory, whatever display the user has
        PrintWriter out = new PrintWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8), false);
        PrintWriter err = new PrintWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8), true);
        int status = ShortRun.of(args).orElseGet(() -> new Clipwitness(out, err).run(args));
        out.flush();
        err.flush();
        System.exit(status);
    }
}
