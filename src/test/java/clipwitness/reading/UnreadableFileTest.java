package clipwitness.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import clipwitness.capture.InputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each file that is no text, or no file, is refused with a sentence that says so. */
class UnreadableFileTest {
    @TempDir
    private Path folder;

    @Test
    void aMissingFileIsNamed() {
        assertThat(refusal(folder.resolve("gone.csv")))
                .isEqualTo("gone.csv: there is no such file. Check the path and the name's ending");
    }

    @Test
    void aFolderIsNoFile() throws IOException {
        Path inner = Files.createDirectory(folder.resolve("inner.csv"));
        assertThat(refusal(inner))
                .isEqualTo("inner.csv: this is a folder, not a file. Name the exports in it one by one");
    }

    @Test
    void anEmptyFileIsCalledEmpty() throws IOException {
        assertThat(refusal(write(new byte[0]))).isEqualTo("x.csv: the file is empty. Export the capture again");
    }

    @Test
    void randomBytesAreNoText() throws IOException {
        byte[] bytes = new byte[20_000];
        new Random(7).nextBytes(bytes);
        bytes[0] = (byte) 0xBB;
        assertThat(refusal(write(bytes)))
                .isEqualTo(
                        "x.csv: this is no text: it holds bytes that no text has. Export the capture as CSV or text");
    }

    @Test
    void anArchiveIsCalledSo() throws IOException {
        byte[] bytes = new byte[5_000];
        new Random(8).nextBytes(bytes);
        System.arraycopy("PK\u0003\u0004".getBytes(StandardCharsets.ISO_8859_1), 0, bytes, 0, 4);
        assertThat(refusal(write(bytes)))
                .isEqualTo(
                        "x.csv: this is a ZIP archive or a spreadsheet workbook, not text. Export the capture as CSV or text");
    }

    @Test
    void zeroBytesAfterTheTextAreFoundByLine() throws IOException {
        StringBuilder text = new StringBuilder("Time (s),CH1 (V)\n");
        for (int i = 0; i < 300; i++) {
            text.append(i).append(".0,0.5\n");
        }
        String padded = text + "\0".repeat(5_000);
        assertThat(refusal(write(padded.getBytes(StandardCharsets.US_ASCII))))
                .isEqualTo(
                        "x.csv, line 302: zero bytes stand where text should be: the file is damaged or was not copied to its "
                                + "end. Copy it from the instrument again");
    }

    @Test
    void aLineOfFourHundredThousandBytesIsRefusedAtOnce() throws IOException {
        assertThat(refusal(write("1,".repeat(200_000).getBytes(StandardCharsets.US_ASCII))))
                .isEqualTo("x.csv, line 1: the line is longer than 32768 characters; an export has one row a sample. "
                        + "If the values of a channel stand side by side, turn rows and columns in a spreadsheet");
    }

    private Path write(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("x.csv"), bytes);
    }

    private static String refusal(Path file) {
        return catchThrowableOfType(
                        InputException.class,
                        () -> ExportReader.read(file, file.getFileName().toString(), ReadingOptions.none()))
                .getMessage();
    }
}
