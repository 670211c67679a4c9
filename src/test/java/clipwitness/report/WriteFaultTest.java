package clipwitness.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import clipwitness.batch.Unwritten;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a user reads where a report cannot be written: the file, what is wrong, what to do, and what stands there now. */
class WriteFaultTest {
    @TempDir
    private Path temp;

    @ParameterizedTest
    @ValueSource(strings = {"N.pdf", "N-results.json", "N-results.csv"})
    void aDocumentThatIsOpenElsewhereIsNamedAndTheEarlierSetStandsWithoutRests(String held) throws Exception {
        new FolderSink(temp).put(OwnFiles.set("old"));
        NotWrittenException fault = put(new HeldDisk(held));
        assertThat(Unwritten.problem(temp, fault).message())
                .isEqualTo(temp + ": could not be written: this user may not write " + temp.resolve(held)
                        + ". Close it where it is open, in a viewer for example, or choose another place with --out;"
                        + " what stood there before is as it was");
        assertThat(OwnFiles.in(temp)).isEqualTo(OwnFiles.texts(OwnFiles.set("old")));
    }

    @Test
    void aFullDiskIsToBeMadeRoomOn() throws Exception {
        new FolderSink(temp).put(OwnFiles.set("old"));
        NotWrittenException fault = put(new FrailDisk(3, false));
        assertThat(Unwritten.problem(temp, fault).message())
                .startsWith(temp + ": could not be written: " + temp)
                .endsWith(": No space left on device. Make room on that disk, or choose another place with --out;"
                        + " what stood there before is as it was");
        assertThat(OwnFiles.in(temp)).isEqualTo(OwnFiles.texts(OwnFiles.set("old")));
    }

    @Test
    void theRemedyNamesTheOptionThatTheUserHas() throws Exception {
        Path file = Files.writeString(temp.resolve("file"), "mine");
        Path folder = file;
        NotWrittenException fault =
                catchThrowableOfType(NotWrittenException.class, () -> new FolderSink(folder).put(OwnFiles.set("new")));
        assertThat(Unwritten.problem(folder, fault, Destination.FOLDER).message())
                .isEqualTo(folder + ": could not be written: " + file
                        + " is a file, not a folder. Choose another folder; what stood there before is as it was");
        assertThat(Unwritten.problem(folder, fault, Destination.PLAN).message())
                .contains(". Choose another place with --plan; ");
        assertThat(file).hasContent("mine");
    }

    private NotWrittenException put(DiskSteps disk) {
        Map<String, byte[]> set = OwnFiles.set("new");
        return catchThrowableOfType(NotWrittenException.class, () -> new FolderSink(temp, disk).put(set));
    }
}
