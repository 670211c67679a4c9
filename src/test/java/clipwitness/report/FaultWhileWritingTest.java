package clipwitness.report;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fault.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** At whatever step writing fails or the program ends, one complete set of documents stands afterwards: the earlier or the new one. */
class FaultWhileWritingTest {
    private static final int PLACES = 200;

    @TempDir
    private Path temp;

    @Test
    void aStepThatFailsLeavesTheEarlierSetOrTheNewOneAndSaysWhich() throws Exception {
        failing(OwnFiles.set("old"), OwnFiles.set("new"));
    }

    @Test
    void aStepThatFailsInAnEmptyFolderLeavesNothing() throws Exception {
        failing(Map.of(), OwnFiles.set("new"));
    }

    @Test
    void aStepThatFailsWherePartOfASetStoodLeavesThatPart() throws Exception {
        failing(Map.of("N-results.csv", OwnFiles.csv("old")), OwnFiles.set("new"));
    }

    @Test
    void anEndAtAnyStepIsSettledByTheNextRun() throws Exception {
        ended(OwnFiles.set("old"), OwnFiles.set("new"));
    }

    @Test
    void anEndAtAnyStepInAnEmptyFolderIsSettledByTheNextRun() throws Exception {
        ended(Map.of(), OwnFiles.set("new"));
    }

    @Test
    void anEndWhileAnEarlierEndIsSettledIsSettledByTheRunAfter() throws Exception {
        Map<String, String> old = OwnFiles.texts(OwnFiles.set("old"));
        for (int first = 0; first < PLACES; first++) {
            for (int second = 0; second < PLACES; second++) {
                Path folder = folderWith(OwnFiles.set("old"));
                boolean one = ends(new FrailDisk(first, true), folder, OwnFiles.set("new"));
                FrailDisk again = new FrailDisk(second, true);
                boolean two = settlingEnds(again, folder);
                new FolderSink(folder).requireFree(List.of(), List.of());
                assertThat(OwnFiles.in(folder))
                        .as(first + ", " + second)
                        .isIn(old, OwnFiles.texts(OwnFiles.set("new")));
                if (!one) {
                    return;
                }
                if (!two) {
                    break;
                }
            }
        }
    }

    private void failing(Map<String, byte[]> earlier, Map<String, byte[]> next) throws Exception {
        int place = 0;
        for (boolean failed = true; failed; place++) {
            Path folder = folderWith(earlier);
            FrailDisk disk = new FrailDisk(place, false);
            try {
                new FolderSink(folder, disk).put(next);
                new FolderSink(folder).requireFree(List.of(), List.of());
                assertThat(OwnFiles.in(folder)).as("place " + place).isEqualTo(OwnFiles.texts(next));
            } catch (NotWrittenException e) {
                if (e.restored()) {
                    assertThat(OwnFiles.in(folder)).as("place " + place).isEqualTo(OwnFiles.texts(earlier));
                }
                new FolderSink(folder).requireFree(List.of(), List.of());
                assertThat(OwnFiles.in(folder)).as("place " + place).isEqualTo(OwnFiles.texts(earlier));
                assertThat(e.target()).doesNotContain(".clipwitness-");
            }
            failed = disk.failed();
        }
        assertThat(place).isBetween(20, PLACES);
    }

    private void ended(Map<String, byte[]> earlier, Map<String, byte[]> next) throws Exception {
        int place = 0;
        for (boolean reached = true; reached; place++) {
            Path folder = folderWith(earlier);
            reached = ends(new FrailDisk(place, true), folder, next);
            new FolderSink(folder).requireFree(List.of(), List.of());
            assertThat(OwnFiles.in(folder)).as("place " + place).isIn(OwnFiles.texts(earlier), OwnFiles.texts(next));
        }
        assertThat(place).isBetween(20, PLACES);
    }

    private static boolean ends(FrailDisk disk, Path folder, Map<String, byte[]> next) throws Exception {
        try {
            new FolderSink(folder, disk).put(next);
            return false;
        } catch (FrailDisk.Ended e) {
            Files.writeString(folder.resolve(".clipwitness-lock"), "of a run that was ended");
            return true;
        }
    }

    private static boolean settlingEnds(FrailDisk disk, Path folder) throws InputException, IOException {
        try {
            new FolderSink(folder, disk).requireFree(List.of(), List.of());
            return false;
        } catch (FrailDisk.Ended e) {
            return true;
        }
    }

    private Path folderWith(Map<String, byte[]> documents) throws IOException {
        Path folder = Files.createTempDirectory(temp, "out");
        for (Map.Entry<String, byte[]> d : new TreeMap<>(documents).entrySet()) {
            Files.write(folder.resolve(d.getKey()), d.getValue());
        }
        return folder;
    }
}
