package clipwitness.reading.sound;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.reading.file.DiskBytes;
import clipwitness.reading.file.SourceFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A sound file as it was recorded.
 *
 * @param rate     samples a second, in Hz
 * @param bits     bits that distinguish values
 * @param whole    whether samples are whole numbers, which end at full scale
 * @param promised samples of a channel that the head states; more than there are where the file was cut
 * @param channels samples of each channel, fractions of full scale; a value that is no number is NaN
 */
public record SoundFile(long rate, int bits, boolean whole, long promised, List<double[]> channels) {
    private static final int HEAD = 12;
    private static final int FRAMES_AT_ONCE = 1 << 14;
    private static final int MOST_FRAMES = 200_000_000; // more than an hour at 48 kHz

    /** Whether a file is one, by its first bytes. */
    public static boolean isOne(byte[] head) {
        String start = new String(head, 0, Math.min(HEAD, head.length), StandardCharsets.ISO_8859_1);
        return start.startsWith("RIFF") && start.endsWith("WAVE") && start.length() == HEAD;
    }

    /**
     * Reads a file.
     *
     * @throws InputException if its head is damaged, its coding is none of those that can be read, or it holds no samples
     */
    public static SoundFile read(SourceFile file) throws InputException {
        try (DiskBytes bytes = file.bytes()) {
            SoundHeader header = SoundHeader.of(file.name(), bytes);
            if (header.frames() < 2 || header.frames() > MOST_FRAMES) {
                throw new InputException(
                        ErrorCode.SOUND_FORMAT,
                        Origin.of(file.name()),
                        "this sound file holds " + header.frames() + " samples a channel",
                        header.frames() < 2
                                ? "Save the whole recording"
                                : "Cut out the seconds that are to be measured");
            }
            return new SoundFile(
                    header.rate(),
                    header.format().bits(),
                    header.format().isWhole(),
                    header.promised(),
                    samples(header, bytes));
        } catch (IOException e) {
            throw SourceFile.unreadable(file.name(), e);
        }
    }

    private static List<double[]> samples(SoundHeader header, DiskBytes bytes) throws IOException {
        int frames = (int) header.frames();
        List<double[]> channels = new ArrayList<>();
        for (int c = 0; c < header.channels(); c++) {
            channels.add(new double[frames]);
        }
        byte[] part = new byte[FRAMES_AT_ONCE * header.frame()];
        for (int first = 0; first < frames; first += FRAMES_AT_ONCE) {
            int count = Math.min(FRAMES_AT_ONCE, frames - first);
            bytes.read(header.from() + (long) first * header.frame(), part, 0, count * header.frame());
            for (int c = 0; c < channels.size(); c++) {
                fill(header, part, c, channels.get(c), first, count);
            }
        }
        return channels;
    }

    private static void fill(SoundHeader header, byte[] part, int channel, double[] into, int first, int count) {
        SoundFormat format = header.format();
        for (int i = 0; i < count; i++) {
            double value = format.value(part, i * header.frame() + channel * format.bytes());
            into[first + i] = Double.isFinite(value) ? value : Double.NaN;
        }
    }
}
