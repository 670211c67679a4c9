package clipwitness.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Writes every case of the layouts as a file for each fuzzer to begin with. */
public final class SeedCorpus {
    private static final Path LAYOUTS = Path.of("src/test/resources/clipwitness/reading/layouts");
    private static final List<String> FUZZERS = List.of(
            "clipwitness/reading/ReaderFuzzTestInputs/anyBytesAreReadOrRefused",
            "clipwitness/batch/LookingFuzzTestInputs/anyBytesAreLookedAtOrRefused");
    private static final int RANDOM_LAYOUTS = 60;

    private SeedCorpus() {}

    /** Writes the seeds under the folder of the test classes, which is the only argument. */
    public static void main(String[] args) throws IOException {
        for (String fuzzer : FUZZERS) {
            write(Files.createDirectories(Path.of(args[0], fuzzer)));
        }
    }

    private static void write(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(LAYOUTS)) {
            for (Path file : files.sorted().toList()) {
                for (LayoutCase layout : LayoutCase.of(file)) {
                    Files.write(folder.resolve(layout.id()), layout.bytes());
                }
            }
        }
        for (int seed = 1; seed <= RANDOM_LAYOUTS; seed++) {
            Files.write(folder.resolve("random-" + seed), new RandomExport(seed).bytes());
        }
    }
}
