package clipwitness.report.picture;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The colour space of screens (IEC 61966-2-1) as a profile (ISO 15076-1, version 4.2): three primaries and one curve by its formula. Written
 * here, because the profile of the platform is not the same everywhere; this one has no time and no serial number.
 */
public final class SrgbProfile {
    /** What output intents call it. */
    public static final String NAME = "sRGB IEC61966-2.1";

    private static final int HEADER = 128;
    private static final int ENTRY = 12;

    /** White D50 and its tristimulus values (ISO 15076-1, 7.2.16), and the primaries adapted to it (IEC 61966-2-1 by way of annex E there). */
    private static final double[] WHITE = {0.9642, 1.0, 0.8249};

    private static final double[] RED = {0.43607, 0.22249, 0.01392};
    private static final double[] GREEN = {0.38515, 0.71687, 0.09708};
    private static final double[] BLUE = {0.14307, 0.06061, 0.71410};

    /** From the white of screens, D65, to D50, row by row (ISO 15076-1, annex E.3, Bradford). */
    private static final double[] ADAPTATION = {
        1.04791, 0.02293, -0.05019, 0.02960, 0.99046, -0.01707, -0.00925, 0.01506, 0.75179
    };

    /** Exponent, slope, offset, slope of the straight part, its end (IEC 61966-2-1, 5.2). */
    private static final double[] CURVE = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};

    private static final int POWER_AND_STRAIGHT_PART = 3;

    private SrgbProfile() {}

    /** Bytes of the profile: header, table of tags, tags. */
    public static byte[] bytes() {
        Map<String, byte[]> tags = tags();
        int at = HEADER + Integer.BYTES + ENTRY * tags.size();
        ByteBuffer profile = ByteBuffer.allocate(
                at + tags.values().stream().mapToInt(t -> t.length).sum());
        header(profile);
        profile.position(HEADER).putInt(tags.size());
        for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
            byte[] value = tag.getValue();
            profile.put(ascii(tag.getKey())).putInt(at).putInt(value.length);
            profile.put(at, value);
            at += value.length;
        }
        return profile.array();
    }

    /** Size, version, class, colour spaces, date and mark (ISO 15076-1, 7.2). */
    private static void header(ByteBuffer profile) {
        profile.putInt(0, profile.capacity()).putInt(8, 0x04200000);
        profile.put(12, ascii("mntrRGB XYZ "));
        profile.putShort(24, (short) 2026).putShort(26, (short) 1).putShort(28, (short) 1);
        profile.put(36, ascii("acsp"));
        for (int i = 0; i < WHITE.length; i++) {
            profile.putInt(68 + i * Integer.BYTES, fixed(WHITE[i]));
        }
    }

    /** What the profile holds, by signature (ISO 15076-1, 9.2); the three colours have the same curve. */
    private static Map<String, byte[]> tags() {
        byte[] curve = curve();
        Map<String, byte[]> tags = new LinkedHashMap<>();
        tags.put("desc", text(NAME));
        tags.put("cprt", text("No rights reserved (CC0 1.0)"));
        tags.put("wtpt", numbers("XYZ ", WHITE));
        tags.put("chad", numbers("sf32", ADAPTATION));
        tags.put("rXYZ", numbers("XYZ ", RED));
        tags.put("gXYZ", numbers("XYZ ", GREEN));
        tags.put("bXYZ", numbers("XYZ ", BLUE));
        tags.put("rTRC", curve);
        tags.put("gTRC", curve);
        tags.put("bTRC", curve);
        return tags;
    }

    private static byte[] numbers(String type, double... values) {
        ByteBuffer tag = ByteBuffer.allocate(2 * Integer.BYTES + Integer.BYTES * values.length);
        tag.put(ascii(type)).putInt(0);
        for (double v : values) {
            tag.putInt(fixed(v));
        }
        return tag.array();
    }

    private static byte[] curve() {
        byte[] parameters = numbers("para", CURVE);
        ByteBuffer tag = ByteBuffer.allocate(parameters.length + Integer.BYTES);
        int head = 2 * Integer.BYTES;
        tag.put(parameters, 0, head).putInt(POWER_AND_STRAIGHT_PART << Short.SIZE);
        return tag.put(parameters, head, parameters.length - head).array();
    }

    /** A text in one language (ISO 15076-1, 10.13), padded to whole words of four bytes. */
    private static byte[] text(String text) {
        byte[] letters = text.getBytes(StandardCharsets.UTF_16BE);
        int record = 12;
        int start = 4 * Integer.BYTES + record;
        ByteBuffer tag = ByteBuffer.allocate((start + letters.length + 3) / 4 * 4);
        tag.put(ascii("mluc")).putInt(0).putInt(1).putInt(record);
        tag.put(ascii("enUS")).putInt(letters.length).putInt(start).put(letters);
        return tag.array();
    }

    /** A number with sixteen bits before and after the point (s15Fixed16Number). */
    private static int fixed(double value) {
        return (int) Math.round(value * (1 << Short.SIZE));
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
