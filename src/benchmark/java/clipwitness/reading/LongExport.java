package clipwitness.reading;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.Random;

/** A long export of two columns, time stamps and a clipped sine with noise. */
final class LongExport {
    private static final double RATE = 1e6;
    private static final double PERIOD = 1_000;

    private LongExport() {}

    /** Writes it, unless it is there already; under another name until it is whole, so that a run that was stopped leaves no short one. */
    static Path written(Path file, int rows) throws IOException {
        if (!Files.exists(file)) {
            Files.createDirectories(file.getParent());
            Path part = file.resolveSibling(file.getFileName() + ".part");
            Random random = new Random(1);
            try (BufferedWriter writer = Files.newBufferedWriter(part, StandardCharsets.US_ASCII)) {
                writer.write("Time (s),CH1 (V)\n");
                for (int i = 0; i < rows; i++) {
                    double volts = Math.tanh(3 * Math.sin(2 * Math.PI * i / PERIOD)) + 0.003 * random.nextGaussian();
                    writer.write(String.format(Locale.ROOT, "%.9e,%.5f\n", i / RATE, volts));
                }
            }
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
        }
        return file;
    }
}
