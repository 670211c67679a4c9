package clipwitness.reading.file;

import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;
import clipwitness.reason.Remark;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * The character encoding of a file.
 *
 * @param charset  the character set
 * @param mark     length of the byte-order mark in bytes, 0 where there is none
 * @param evidence how it was detected
 */
public record Encoding(Charset charset, int mark, Remark evidence) {
    private static final Charset EIGHT_BIT = Charset.forName("windows-1252");
    private static final int LOOKED_AT = 4096;

    /** Two bytes a character: the bytes need decoding before rows can be scanned. */
    public boolean wide() {
        return charset.equals(StandardCharsets.UTF_16LE) || charset.equals(StandardCharsets.UTF_16BE);
    }

    /**
     * Detects the encoding from the first bytes of a file.
     *
     * @param first the first bytes, cut anywhere
     */
    static Encoding of(byte[] first) {
        if (startsWith(first, 0xEF, 0xBB, 0xBF)) {
            return new Encoding(StandardCharsets.UTF_8, 3, byMark("UTF-8"));
        }
        if (startsWith(first, 0xFF, 0xFE)) {
            return new Encoding(StandardCharsets.UTF_16LE, 2, byMark("UTF-16 LE"));
        }
        if (startsWith(first, 0xFE, 0xFF)) {
            return new Encoding(StandardCharsets.UTF_16BE, 2, byMark("UTF-16 BE"));
        }
        if (zerosAt(first, 1) && !zerosAt(first, 0)) {
            return new Encoding(StandardCharsets.UTF_16LE, 0, Remark.of(LayoutRemark.ENCODING_SECOND_ZERO));
        }
        if (zerosAt(first, 0) && !zerosAt(first, 1)) {
            return new Encoding(StandardCharsets.UTF_16BE, 0, Remark.of(LayoutRemark.ENCODING_FIRST_ZERO));
        }
        return ofBytes(first);
    }

    private static Encoding ofBytes(byte[] first) {
        boolean ascii = true;
        for (byte b : first) {
            ascii &= b >= 0;
        }
        if (ascii) {
            return new Encoding(StandardCharsets.UTF_8, 0, Remark.of(LayoutRemark.ENCODING_ASCII));
        }
        if (isUtf8(first)) {
            return new Encoding(StandardCharsets.UTF_8, 0, Remark.of(LayoutRemark.ENCODING_SEQUENCES));
        }
        return new Encoding(EIGHT_BIT, 0, Remark.of(LayoutRemark.ENCODING_EIGHT_BIT));
    }

    private static Remark byMark(String encoding) {
        return Remark.of(LayoutRemark.ENCODING_BY_MARK, Argument.name(encoding));
    }

    private static boolean isUtf8(byte[] first) {
        int end = first.length;
        for (int back = 0; back < 3 && end > 0 && first[end - 1] < 0; back++) {
            end--; // a sequence may be cut at the end
        }
        return isUtf8(first, 0, end);
    }

    /** Whether bytes from one place up to, not including, another are UTF-8. */
    static boolean isUtf8(byte[] bytes, int from, int to) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes, from, to - from));
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }

    private static boolean startsWith(byte[] bytes, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    /** Whether at least three quarters of the bytes at odd (1) or even (0) places are zero. */
    private static boolean zerosAt(byte[] bytes, int first) {
        int places = 0;
        int zeros = 0;
        for (int i = first; i < Math.min(bytes.length, LOOKED_AT); i += 2) {
            places++;
            zeros += bytes[i] == 0 ? 1 : 0;
        }
        return places > 1 && zeros * 4 >= places * 3;
    }
}
