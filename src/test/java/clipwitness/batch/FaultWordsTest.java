package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.fault.InputException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Words for what goes wrong around a job: folders, writing, a fault of the program. */
class FaultWordsTest {
    private static final Path OUT = Path.of("out");
    private static final String REMEDY = ". Choose another place with --out; what stood there before is as it was";

    @Test
    void aReportOntoAFile() {
        assertThat(Unwritten.problem(OUT, new FileAlreadyExistsException("out")).message())
                .isEqualTo("out: could not be written: out is a file, not a folder" + REMEDY);
    }

    @Test
    void aReportWhereThisUserMayNotWrite() {
        assertThat(Unwritten.problem(OUT, new AccessDeniedException("out/T-1.pdf"))
                        .message())
                .isEqualTo("out: could not be written: this user may not write out/T-1.pdf" + REMEDY);
    }

    @Test
    void aReportOntoAFullDisk() {
        assertThat(Unwritten.problem(OUT, new FileSystemException("out/T-1.pdf", null, "No space left on device"))
                        .message())
                .isEqualTo("out: could not be written: out/T-1.pdf: No space left on device" + REMEDY);
        assertThat(Unwritten.problem(OUT, new IOException("No space left on device"))
                        .message())
                .isEqualTo("out: could not be written: No space left on device" + REMEDY);
    }

    @Test
    void aFolderOfJobsThatCannotBeListed(@TempDir Path folder) {
        Path gone = folder.resolve("gone");
        assertThatThrownBy(() -> JobFolders.within(gone))
                .isInstanceOf(InputException.class)
                .hasMessage(gone + ": the folder cannot be read. Check its permissions");
    }

    @Test
    void aFaultOfTheProgramNamesItsPlaceAndAsksForTheJob() {
        IllegalArgumentException cause = new IllegalArgumentException("sampleRate must be above 0 Hz");
        cause.setStackTrace(new StackTraceElement[] {
            new StackTraceElement("java.util.Objects", "requireNonNull", "Objects.java", 1),
            new StackTraceElement("clipwitness.capture.Waveform", "<init>", "Waveform.java", 20),
            new StackTraceElement("clipwitness.batch.Loading", "load", "Loading.java", 30)
        });
        assertThat(new OwnFault(Path.of("job"), "T-1", new IllegalStateException(cause))
                        .problem("the job folder")
                        .message())
                .isEqualTo("job: a fault of the program, not of the job: sampleRate must be above 0 Hz"
                        + " (at capture.Waveform:20, batch.Loading:30)."
                        + " The other jobs go on; please report it with the job folder");
    }
}
