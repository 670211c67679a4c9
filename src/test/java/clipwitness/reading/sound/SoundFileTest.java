package clipwitness.reading.sound;

import static clipwitness.reading.sound.WavBytes.FLOAT;
import static clipwitness.reading.sound.WavBytes.PCM;
import static clipwitness.reading.sound.WavBytes.hex;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.fault.InputException;
import clipwitness.reading.file.SourceFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole numbers in two's complement, little-endian, full scale 2^(bits - 1): RIFF and WAVE, 1991; floats: IEEE 754-2019. */
class SoundFileTest {
    private static final byte[] TWO_SAMPLES = hex("0040 00c0");

    @TempDir
    Path folder;

    private SoundFile read(WavBytes wav) throws IOException, InputException {
        return read(wav.file());
    }

    private SoundFile read(byte[] bytes) throws IOException, InputException {
        Path file = Files.write(folder.resolve("a.wav"), bytes);
        return SoundFile.read(SourceFile.open(file, "a.wav"));
    }

    @Test
    void sixteenBits() throws IOException, InputException {
        SoundFile sound = read(new WavBytes().format(PCM, 1, 48_000, 16).chunk("data", hex("0080 ff7f 0000 ffff")));
        assertThat(sound.channels().get(0)).containsExactly(-1, 32767 / 32768.0, 0, -1 / 32768.0);
        assertThat(sound.rate()).isEqualTo(48_000);
        assertThat(sound.bits()).isEqualTo(16);
        assertThat(sound.whole()).isTrue();
    }

    @Test
    void twentyFourBits() throws IOException, InputException {
        SoundFile sound =
                read(new WavBytes().format(PCM, 1, 96_000, 24).chunk("data", hex("000080 ffff7f 010000 ffffff")));
        assertThat(sound.channels().get(0)).containsExactly(-1, 8388607 / 8388608.0, 1 / 8388608.0, -1 / 8388608.0);
    }

    @Test
    void thirtyTwoBits() throws IOException, InputException {
        SoundFile sound = read(new WavBytes().format(PCM, 1, 44_100, 32).chunk("data", hex("00000080 00000040")));
        assertThat(sound.channels().get(0)).containsExactly(-1, 0.5);
    }

    @Test
    void floatsAreTakenAsTheyAreAboveFullScaleToo() throws IOException, InputException {
        SoundFile sound = read(new WavBytes()
                .format(FLOAT, 1, 48_000, 32)
                .chunk("data", hex("0000803f 000000c0 0000c07f"))); // 1, -2 and no number
        assertThat(sound.channels().get(0)).containsExactly(1, -2, Double.NaN);
        assertThat(sound.whole()).isFalse();
    }

    @Test
    void channelsAlternate() throws IOException, InputException {
        SoundFile sound = read(new WavBytes().format(PCM, 2, 48_000, 16).chunk("data", hex("0040 0020 00c0 00e0")));
        assertThat(sound.channels().get(0)).containsExactly(0.5, -0.5);
        assertThat(sound.channels().get(1)).containsExactly(0.25, -0.25);
    }

    @Test
    void eightChannels() throws IOException, InputException {
        SoundFile sound = read(new WavBytes()
                .extensible(PCM, 8, 48_000, 16)
                .chunk("data", hex("0000 0010 0020 0030 0040 0050 0060 0070".repeat(3))));
        assertThat(sound.channels()).hasSize(8);
        assertThat(sound.channels().get(7)).containsExactly(0.875, 0.875, 0.875);
    }

    @Test
    void theExtensibleHeaderNamesTheCodingInItsSubFormat() throws IOException, InputException {
        SoundFile sound = read(new WavBytes().extensible(FLOAT, 1, 48_000, 32).chunk("data", hex("0000003f 000000bf")));
        assertThat(sound.channels().get(0)).containsExactly(0.5, -0.5);
    }

    @Test
    void chunksComeInAnyOrderAndOddOnesArePadded() throws IOException, InputException {
        SoundFile sound = read(new WavBytes()
                .chunk("LIST", "odd".getBytes(StandardCharsets.US_ASCII))
                .chunk("data", TWO_SAMPLES)
                .chunk("bext", new byte[603])
                .format(PCM, 1, 48_000, 16));
        assertThat(sound.channels().get(0)).containsExactly(0.5, -0.5);
    }

    @Test
    void aFileThatWasCutGivesWhatItHolds() throws IOException, InputException {
        SoundFile sound =
                read(new WavBytes().format(PCM, 2, 48_000, 16).chunk("data", 4000, hex("0040 0020 00c0 00e0 0000")));
        assertThat(sound.channels().get(0)).containsExactly(0.5, -0.5);
        assertThat(sound.promised()).isEqualTo(1000);
    }

    @Test
    void aRecorderThatNeverWroteTheLengthIsReadToTheEnd() throws IOException, InputException {
        for (int length : new int[] {0, -1}) {
            SoundFile sound = read(new WavBytes().format(PCM, 1, 48_000, 16).chunk("data", length, TWO_SAMPLES));
            assertThat(sound.channels().get(0)).containsExactly(0.5, -0.5);
            assertThat(sound.promised()).isEqualTo(2);
        }
    }

    private void refused(WavBytes wav, String message) {
        assertThatThrownBy(() -> read(wav)).isInstanceOf(InputException.class).hasMessage(message);
    }

    @Test
    void otherCodingsAreNamed() {
        String coding = "a.wav: this sound file holds samples of %d bit in the coding %d, which cannot be read. "
                + "Save it as WAV with PCM of 16, 24 or 32 bit, or with 32-bit float";
        refused(new WavBytes().format(PCM, 1, 8000, 8).chunk("data", TWO_SAMPLES), coding.formatted(8, 1));
        refused(new WavBytes().format(FLOAT, 1, 8000, 64).chunk("data", TWO_SAMPLES), coding.formatted(64, 3));
        refused(new WavBytes().format(85, 2, 8000, 0).chunk("data", TWO_SAMPLES), coding.formatted(0, 85));
    }

    @Test
    void damagedHeadsAreNamed() {
        String damaged = "a.wav: the head of this sound file is damaged: %s. Save it again as WAV";
        refused(
                new WavBytes().chunk("data", TWO_SAMPLES),
                damaged.formatted("it does not say how its samples are written"));
        refused(new WavBytes().format(PCM, 1, 48_000, 16), damaged.formatted("it holds no samples"));
        refused(
                new WavBytes().format(PCM, 0, 48_000, 16).chunk("data", TWO_SAMPLES),
                damaged.formatted("it states 0 channels of 16 bit in 0 bytes"));
        refused(
                new WavBytes().format(PCM, 1, 0, 16).chunk("data", TWO_SAMPLES),
                damaged.formatted("it states 0 samples a second"));
        refused(
                new WavBytes().chunk("fmt ", hex("0100 0100")).chunk("data", TWO_SAMPLES),
                damaged.formatted("it does not say how its samples are written"));
    }

    @Test
    void aFileWithoutSamplesIsNamed() {
        refused(
                new WavBytes().format(PCM, 1, 48_000, 16).chunk("data", 400, new byte[0]),
                "a.wav: this sound file holds 0 samples a channel. Save the whole recording");
    }
}
