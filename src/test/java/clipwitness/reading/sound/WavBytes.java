package clipwitness.reading.sound;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** Writes a sound file chunk by chunk, as the RIFF and WAVE specification has it (Multimedia Programming Interface and Data Specifications 1.0, 1991). */
final class WavBytes {
    static final int PCM = 1;
    static final int FLOAT = 3;
    static final int EXTENSIBLE = 0xfffe;

    private final ByteArrayOutputStream chunks = new ByteArrayOutputStream();

    /** Little-endian bytes of some hexadecimal text, spaces aside. */
    static byte[] hex(String text) {
        String digits = text.replace(" ", "");
        byte[] bytes = new byte[digits.length() / 2];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) Integer.parseInt(digits.substring(2 * i, 2 * i + 2), 16);
        }
        return bytes;
    }

    WavBytes format(int tag, int channels, int rate, int bits) {
        return chunk("fmt ", formatBytes(tag, channels, rate, bits, 16));
    }

    /** The extensible header: the coding stands in the first two bytes of the sub-format. */
    WavBytes extensible(int coding, int channels, int rate, int bits) {
        byte[] body = formatBytes(EXTENSIBLE, channels, rate, bits, 40);
        ByteBuffer.wrap(body)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putShort(16, (short) 22)
                .putShort(18, (short) bits)
                .putShort(24, (short) coding);
        return chunk("fmt ", body);
    }

    private static byte[] formatBytes(int tag, int channels, int rate, int bits, int length) {
        int frame = channels * bits / 8;
        return ByteBuffer.allocate(length)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putShort((short) tag)
                .putShort((short) channels)
                .putInt(rate)
                .putInt(rate * frame)
                .putShort((short) frame)
                .putShort((short) bits)
                .array();
    }

    WavBytes chunk(String id, byte[] body) {
        return chunk(id, body.length, body);
    }

    /** A chunk whose head tells of another length than it has. */
    WavBytes chunk(String id, int length, byte[] body) {
        chunks.writeBytes(id.getBytes(StandardCharsets.US_ASCII));
        chunks.writeBytes(ByteBuffer.allocate(4)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(length)
                .array());
        chunks.writeBytes(body);
        if (body.length % 2 == 1) {
            chunks.write(0);
        }
        return this;
    }

    byte[] file() {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes("RIFF".getBytes(StandardCharsets.US_ASCII));
        file.writeBytes(ByteBuffer.allocate(4)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(4 + chunks.size())
                .array());
        file.writeBytes("WAVE".getBytes(StandardCharsets.US_ASCII));
        file.writeBytes(chunks.toByteArray());
        return file.toByteArray();
    }
}
