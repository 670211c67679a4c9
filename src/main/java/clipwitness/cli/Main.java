package clipwitness.cli;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.NativeNames;
import java.io.BufferedWriter;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

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
        PrintWriter out = new PrintWriter(writer(FileDescriptor.out), false);
        PrintWriter err = new PrintWriter(writer(FileDescriptor.err), true);
        Optional<String> fault = Surroundings.fault(Charset.defaultCharset(), NativeNames.here(), List.of(args));
        fault.map(ErrorCode.WRONG_LOCALE::after).ifPresent(err::println);
        int status = fault.isPresent() ? Clipwitness.TROUBLE : new Clipwitness(out, err).run(args);
        out.flush();
        err.flush();
        System.exit(status);
    }

    /** Not the streams of {@code System}: they hide that something could not be written. */
    private static Writer writer(FileDescriptor to) {
        OutputStream stream = new FileOutputStream(to);
        return new PlainWriter(new BufferedWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8)));
    }
}
