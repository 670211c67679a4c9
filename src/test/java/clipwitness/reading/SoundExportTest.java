package clipwitness.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clipwitness.capture.Channel;
import clipwitness.capture.TimeRecord;
import clipwitness.fault.InputException;
import clipwitness.quantity.Unit;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtCode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sound files as records, written by the sound library of the Java platform. */
class SoundExportTest {
    @TempDir
    Path folder;

    /** One period of a square wave of half of full scale in the left channel, of an eighth in the right one. */
    private Path square() throws IOException {
        byte[] frames = {
            0, 0x40, 0, 0x10, 0, 0x40, 0, 0x10, 0, (byte) 0xc0, 0, (byte) 0xf0, 0, (byte) 0xc0, 0, (byte) 0xf0
        };
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        AudioFormat format = new AudioFormat(44_100, 16, 2, true, false);
        AudioSystem.write(
                new AudioInputStream(new ByteArrayInputStream(frames), format, 4), AudioFileFormat.Type.WAVE, bytes);
        return Files.write(folder.resolve("square.wav"), bytes.toByteArray());
    }

    private static TimeRecord read(Path file, OptionalDouble scale) throws InputException {
        ReadingOptions options = new ReadingOptions(OptionalDouble.empty(), Optional.empty(), scale);
        return (TimeRecord) ExportReader.read(file, file.getFileName().toString(), options);
    }

    @Test
    void fullScaleInVoltsGivesVolts() throws IOException, InputException {
        TimeRecord record = read(square(), OptionalDouble.of(2.5));
        assertThat(record.sampleRate()).isCloseTo(44_100, within(1e-6));
        assertThat(record.channels()).extracting(Channel::name).containsExactly("1", "2");
        assertThat(record.channels()).extracting(Channel::unit).containsOnly(Optional.of(Unit.VOLT));
        assertThat(record.channels().get(0).samples().toArray()).containsExactly(1.25, 1.25, -1.25, -1.25);
        assertThat(record.channels().get(1).samples().maximum()).isEqualTo(0.3125);
        assertThat(record.doubts()).extracting(Doubt::code).containsExactly(DoubtCode.AC_COUPLED);
    }

    @Test
    void withoutScaleThereAreNoVolts() throws IOException, InputException {
        TimeRecord record = read(square(), OptionalDouble.empty());
        assertThat(record.channels()).extracting(Channel::unit).containsOnly(Optional.empty());
        assertThat(record.channels().get(0).samples().maximum()).isEqualTo(0.5);
        assertThat(record.doubts()).extracting(Doubt::code).contains(DoubtCode.UNIT_ASSUMED);
    }

    @Test
    void soundFilesOfOtherKindsAreNamed() throws IOException {
        for (String start : new String[] {"fLaC", "OggS", "ID3\u0003", "FORM", "RF64"}) {
            Path file = Files.write(
                    folder.resolve("other.snd"), (start + "\0\0\0\0\0\0\0\0").getBytes(StandardCharsets.ISO_8859_1));
            assertThatThrownBy(() -> read(file, OptionalDouble.empty()))
                    .isInstanceOf(InputException.class)
                    .hasMessage("other.snd: this is a sound file, but none of the kind that can be read. "
                            + "Save it as WAV with PCM of 16, 24 or 32 bit");
        }
    }
}
