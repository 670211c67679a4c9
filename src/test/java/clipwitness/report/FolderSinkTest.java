package clipwitness.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.fault.InputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderSinkTest {
    private static final String FOREIGN = ": a file that this program has not written has the name of a result,"
            + " and is left as it is. Name another place with --out, or move it away";

    @TempDir
    private Path temp;

    @Test
    void documentsAppearUnderTheirNamesAndNothingElse() throws Exception {
        Path out = temp.resolve("a/b");
        new FolderSink(out).put(OwnFiles.set("new"));
        assertThat(OwnFiles.in(out)).isEqualTo(OwnFiles.texts(OwnFiles.set("new")));
    }

    @Test
    void anEarlierReportIsReplaced() throws Exception {
        new FolderSink(temp).put(OwnFiles.set("old"));
        new FolderSink(temp).requireFree(OwnFiles.set("new").keySet(), List.of());
        new FolderSink(temp).put(OwnFiles.set("new"));
        assertThat(OwnFiles.in(temp)).isEqualTo(OwnFiles.texts(OwnFiles.set("new")));
    }

    @Test
    void aTableOfAnEarlierVersionWithoutTheRowOfTheDigestIsReplaced() throws Exception {
        String today = new String(OwnFiles.csv("old"), StandardCharsets.UTF_8);
        String earlier = today.lines().findFirst().orElseThrow() + "\ncapture,received,,a.csv,thd,,,,,,1.5,%,,,,\n";
        Files.writeString(temp.resolve("N-results.csv"), earlier);
        new FolderSink(temp).put(OwnFiles.set("new"));
        assertThat(OwnFiles.in(temp)).isEqualTo(OwnFiles.texts(OwnFiles.set("new")));
    }

    @Test
    void aTableOfOtherColumnsIsSomebodyElses() throws Exception {
        String today = new String(OwnFiles.csv("old"), StandardCharsets.UTF_8);
        Path file = Files.writeString(temp.resolve("N-results.csv"), today.replaceFirst("reason\n", "reason,mine\n"));
        assertThatThrownBy(() -> new FolderSink(temp).put(OwnFiles.set("new")))
                .isInstanceOf(InputException.class)
                .hasMessage(file + FOREIGN);
    }

    @Test
    void aFileOfSomebodyElseIsNamedAndLeftAsItIs() throws IOException {
        for (String name : List.of("N.pdf", "N-results.json", "N-results.csv", "N-fault.txt")) {
            Path folder = Files.createDirectories(temp.resolve(name + "-case"));
            Path file = Files.writeString(folder.resolve(name), "%PDF- { section, mine");
            for (boolean early : List.of(true, false)) {
                assertThatThrownBy(() -> {
                            if (early) {
                                new FolderSink(folder).requireFree(List.of(name), List.of());
                            }
                            new FolderSink(folder).put(Map.of(name, new byte[0]));
                        })
                        .isInstanceOf(InputException.class)
                        .hasMessage(file + FOREIGN);
            }
            assertThat(OwnFiles.in(folder)).isEqualTo(Map.of(name, "%PDF- { section, mine"));
        }
    }

    @Test
    void anInputIsNeverReplacedEvenIfItIsAnEarlierResult() throws Exception {
        new FolderSink(temp).put(OwnFiles.set("old"));
        Path input = temp.resolve("../" + temp.getFileName() + "/N-results.csv");
        assertThatThrownBy(() -> new FolderSink(temp).requireFree(List.of("N-results.csv"), List.of(input)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("this input of the job has the name of a result");
    }

    @Test
    void aFolderAndALinkInTheWayAreNamed() throws Exception {
        Files.createDirectories(temp.resolve("N.pdf"));
        Files.write(temp.resolve("elsewhere"), OwnFiles.json("old"));
        Files.createSymbolicLink(temp.resolve("N-results.json"), temp.resolve("elsewhere"));
        assertThatThrownBy(() -> new FolderSink(temp).put(OwnFiles.set("new")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("N.pdf: a folder has the name of a result")
                .hasMessageContaining("N-results.json" + FOREIGN);
        assertThat(temp.resolve("elsewhere")).hasBinaryContent(OwnFiles.json("old"));
        assertThat(temp.resolve("N-results.csv")).doesNotExist();
    }

    @Test
    void aFolderThatAFailingRunMadeIsRemoved() throws IOException {
        Path out = temp.resolve("a/b");
        assertThatThrownBy(() -> new FolderSink(out).put(Map.of("no/such/folder.pdf", new byte[1])))
                .isInstanceOf(NotWrittenException.class);
        try (Stream<Path> left = Files.list(temp)) {
            assertThat(left).isEmpty();
        }
    }

    @Test
    void aJournalThatNamesFilesElsewhereMovesNothing() throws Exception {
        Path out = Files.createDirectories(temp.resolve("out"));
        Files.write(temp.resolve("N.pdf"), OwnFiles.pdf("outside"));
        Files.writeString(out.resolve(".clipwitness-journal"), "clipwitness journal 1\nnew ..%2FN.pdf\nend\n");
        new FolderSink(out).put(OwnFiles.set("new"));
        assertThat(temp.resolve("N.pdf")).hasBinaryContent(OwnFiles.pdf("outside"));
        assertThat(OwnFiles.in(out)).isEqualTo(OwnFiles.texts(OwnFiles.set("new")));
    }

    @Test
    void runsAtOnceLeaveOneConsistentSet() throws Exception {
        ExecutorService runs = Executors.newFixedThreadPool(4);
        try {
            List<Future<?>> all = new ArrayList<>();
            for (int i = 0; i < 24; i++) {
                Map<String, byte[]> set = OwnFiles.set("run " + i);
                all.add(runs.submit(() -> {
                    new FolderSink(temp).put(set);
                    return null;
                }));
            }
            for (Future<?> run : all) {
                run.get();
            }
        } finally {
            runs.shutdown();
        }
        assertThat(OwnFiles.in(temp))
                .isIn(Stream.iterate(0, i -> i + 1)
                        .limit(24)
                        .map(i -> OwnFiles.texts(OwnFiles.set("run " + i)))
                        .toList());
    }
}
