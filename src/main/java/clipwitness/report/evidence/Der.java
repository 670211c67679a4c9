package clipwitness.report.evidence;

import java.io.ByteArrayOutputStream;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Writes values in the distinguished encoding rules of ASN.1 (ITU-T X.690), as far as a signature needs them. */
final class Der {
    private static final int INTEGER = 0x02;
    private static final int OCTETS = 0x04;
    private static final int NULL = 0x05;
    private static final int OBJECT_IDENTIFIER = 0x06;
    private static final int SEQUENCE = 0x30;
    private static final int SET = 0x31;
    private static final int CONTEXT = 0xA0;
    private static final int LONG_FORM = 0x80;

    private Der() {}

    static byte[] sequence(byte[]... parts) {
        return tagged(SEQUENCE, joined(parts));
    }

    /** A set; the rules order its elements by their bytes. */
    static byte[] set(byte[]... elements) {
        return tagged(SET, joined(sorted(elements)));
    }

    /** The same under a number of the context, in place of the set's own tag. */
    static byte[] numberedSet(int number, byte[]... elements) {
        return tagged(CONTEXT | number, joined(sorted(elements)));
    }

    /** A value under a number of the context. */
    static byte[] numbered(int number, byte[] value) {
        return tagged(CONTEXT | number, value);
    }

    static byte[] integer(BigInteger value) {
        return tagged(INTEGER, value.toByteArray());
    }

    static byte[] octets(byte[] value) {
        return tagged(OCTETS, value);
    }

    static byte[] nothing() {
        return tagged(NULL, new byte[0]);
    }

    /** An object identifier in dots (X.690, 8.19). */
    static byte[] identifier(String dotted) {
        int[] arcs =
                Arrays.stream(dotted.split("\\.")).mapToInt(Integer::parseInt).toArray();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        arc(bytes, arcs[0] * 40 + arcs[1]);
        for (int i = 2; i < arcs.length; i++) {
            arc(bytes, arcs[i]);
        }
        return tagged(OBJECT_IDENTIFIER, bytes.toByteArray());
    }

    /** Seven bits a byte, the highest first; all but the last have their highest bit set. */
    private static void arc(ByteArrayOutputStream bytes, int value) {
        for (int shift = 28; shift > 0; shift -= 7) {
            if (value >>> shift != 0) {
                bytes.write(LONG_FORM | ((value >>> shift) & 0x7F));
            }
        }
        bytes.write(value & 0x7F);
    }

    private static byte[] tagged(int tag, byte[] content) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(content.length + 6);
        bytes.write(tag);
        if (content.length < LONG_FORM) {
            bytes.write(content.length);
        } else {
            byte[] length = BigInteger.valueOf(content.length).toByteArray();
            int from = length[0] == 0 ? 1 : 0;
            bytes.write(LONG_FORM | (length.length - from));
            bytes.write(length, from, length.length - from);
        }
        bytes.writeBytes(content);
        return bytes.toByteArray();
    }

    private static byte[][] sorted(byte[]... elements) {
        List<byte[]> sorted = new ArrayList<>(List.of(elements));
        sorted.sort(Arrays::compareUnsigned);
        return sorted.toArray(byte[][]::new);
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            bytes.writeBytes(part);
        }
        return bytes.toByteArray();
    }
}
