package clipwitness.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import clipwitness.fault.InputException;
import clipwitness.reading.file.SourceFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
    void zeroBytesAfterTheTextAreFoundByLine() throws IOException {
        StringBuilder text = new StringBuilder("Time (s),CH1 (V)\n");
        for (int i = 0; i < 300; i++) {
            text.append(i).append(".0,0.5\n");
        }
        String padded = text + "\0".repeat(5_000);
        assertThat(refusal(write(padded.getBytes(StandardCharsets.US_ASCII))))
                .isEqualTo(
                        "x.csv, line 302: there are zero bytes where text should be: the file is damaged or was not copied to its "
                                + "end. Copy it from the instrument again");
    }

    @Test
    void aLineOfFourHundredThousandBytesIsRefusedAtOnce() throws IOException {
        assertThat(refusal(write("1,".repeat(200_000).getBytes(StandardCharsets.US_ASCII))))
                .isEqualTo("x.csv, line 1: the line is longer than 32768 characters; an export has one row a sample. "
                        + "If the values of a channel stand side by side, turn rows and columns in a spreadsheet");
    }

    @ParameterizedTest
    @CsvSource({
        "504B0304, this is a ZIP archive or a spreadsheet workbook",
        "504B0506, this is an empty ZIP archive",
        "1F8B, this is a gzip archive",
        "377ABCAF, this is a 7z archive",
        "D0CF11E0, this is an old spreadsheet workbook",
        "25504446, this is a PDF document",
        "89504E47, this is a picture",
        "FFD8FF, this is a picture",
        "47494638, this is a picture",
        "424D, this is a picture or another binary file",
        "52494646, this is a video or another binary file"
    })
    void aFileOfAnotherFormatIsCalledByItsName(String start, String words) throws IOException {
        byte[] bytes = new byte[5_000];
        new Random(8).nextBytes(bytes);
        byte[] signature = HexFormat.of().parseHex(start);
        System.arraycopy(signature, 0, bytes, 0, signature.length);
        assertThat(refusal(write(bytes)))
                .isEqualTo("x.csv: " + words + ", not text. Export the capture as CSV or text");
    }

    @Test
    void aFileThatMayNotBeReadAndOneOnABrokenDiskAreToldApart() {
        assertThat(SourceFile.unreadable("x.csv", new AccessDeniedException("x.csv")))
                .hasMessage("x.csv: the file may not be read. Check its permissions");
        assertThat(SourceFile.unreadable("x.csv", new IOException("Input/output error")))
                .hasMessage("x.csv: the file could not be read: Input/output error. Copy it again and retry");
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
