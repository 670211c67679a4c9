package clipwitness.reading.sound;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.reading.file.DiskBytes;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * What the head of a WAV file says: RIFF chunks in any order, PCM or float, the plain header or the extensible one (Multimedia Programming
 * Interface and Data Specifications 1.0, 1991; multiple channel audio data and WAVE files, 2001).
 *
 * @param format   how a sample is written
 * @param channels number of channels
 * @param rate     frames a second, in Hz
 * @param from     place of the first sample in the file
 * @param frames   frames that the file holds: samples of all channels at one time
 * @param promised frames that its head states
 */
record SoundHeader(SoundFormat format, int channels, long rate, long from, long frames, long promised) {
    private static final int CHUNK_HEAD = 8;
    private static final int FIRST_CHUNK = 12;
    private static final int LEAST_FORMAT = 16;
    private static final int MOST_FORMAT = 64;
    private static final int EXTENSIBLE = 0xfffe;
    private static final int TAG_OF_EXTENSIBLE = 24;
    private static final int MOST_CHANNELS = 64;
    private static final long MOST_RATE = 10_000_000;

    /** A recorder that was cut off, or that streamed, leaves one of these as the length of its samples. */
    private static final long UNFINISHED = 0xffffffffL;

    /**
     * Reads the head.
     *
     * @param name the file's name in messages
     * @throws InputException if it is no head of a WAV file that can be read
     */
    static SoundHeader of(String name, DiskBytes file) throws InputException, IOException {
        long data = -1;
        long length = 0;
        ByteBuffer format = null;
        long at = FIRST_CHUNK;
        while (at + CHUNK_HEAD <= file.size() && (data < 0 || format == null)) {
            ByteBuffer head = bytes(file, at, CHUNK_HEAD);
            byte[] letters = new byte[4];
            head.get(0, letters);
            String id = new String(letters, StandardCharsets.ISO_8859_1);
            long size = Integer.toUnsignedLong(head.getInt(4));
            long body = at + CHUNK_HEAD;
            if (id.equals("fmt ")) {
                format = bytes(file, body, (int) Math.min(size, MOST_FORMAT));
            } else if (id.equals("data")) {
                data = body;
                length = size == 0 || size == UNFINISHED ? file.size() - body : size;
            }
            at = body + size + (size & 1); // chunks begin at even places
        }
        if (format == null || format.capacity() < LEAST_FORMAT) {
            throw broken(name, "it does not say how its samples are written");
        }
        if (data < 0) {
            throw broken(name, "it holds no samples");
        }
        return of(name, format, data, length, file.size());
    }

    private static SoundHeader of(String name, ByteBuffer head, long data, long length, long size)
            throws InputException {
        int tag = Short.toUnsignedInt(head.getShort(0));
        int channels = Short.toUnsignedInt(head.getShort(2));
        long rate = Integer.toUnsignedLong(head.getInt(4));
        int frame = Short.toUnsignedInt(head.getShort(12));
        int bits = Short.toUnsignedInt(head.getShort(14));
        if (tag == EXTENSIBLE && head.capacity() > TAG_OF_EXTENSIBLE + 1) {
            tag = Short.toUnsignedInt(head.getShort(TAG_OF_EXTENSIBLE));
        }
        SoundFormat format = SoundFormat.of(tag, bits).orElse(null);
        if (format == null) {
            throw new InputException(
                    ErrorCode.SOUND_FORMAT,
                    Origin.of(name),
                    "this sound file holds samples of " + bits + " bit in the coding " + tag + ", which cannot be read",
                    "Save it as WAV with PCM of 16, 24 or 32 bit, or with 32-bit float");
        }
        if (channels < 1 || channels > MOST_CHANNELS || frame != channels * format.bytes()) {
            throw broken(name, "it states " + channels + " channels of " + bits + " bit in " + frame + " bytes");
        }
        if (rate < 1 || rate > MOST_RATE) {
            throw broken(name, "it states " + rate + " samples a second");
        }
        long held = Math.max(0, Math.min(length, size - data));
        return new SoundHeader(format, channels, rate, data, held / frame, length / frame);
    }

    /** Bytes of a frame. */
    int frame() {
        return channels * format.bytes();
    }

    private static ByteBuffer bytes(DiskBytes file, long from, int length) throws IOException {
        byte[] bytes = new byte[length];
        int read = file.read(from, bytes, 0, length);
        return ByteBuffer.wrap(bytes, 0, read).slice().order(ByteOrder.LITTLE_ENDIAN);
    }

    private static InputException broken(String name, String what) {
        return new InputException(
                ErrorCode.DAMAGED,
                Origin.of(name),
                "the head of this sound file is damaged: " + what,
                "Save it again as WAV");
    }
}
