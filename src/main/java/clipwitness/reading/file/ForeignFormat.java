package clipwitness.reading.file;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Recognises files that are no text exports at all, whatever their name says. */
public final class ForeignFormat {
    private static final String EXPORT_AS_TEXT = "Export the capture as CSV or text";
    private static final String SAVE_AS_WAV = "Save it as WAV with PCM of 16, 24 or 32 bit";
    private static final List<String> SOUNDS =
            List.of("fLaC", "OggS", "ID3", "FORM", "caff", "RF64", "\u00ff\u00fb", "\u00ff\u00f1");
    private static final List<String> PAGES = List.of("<!doctype", "<html", "<?xml");
    private static final int LOOKED_AT = 1 << 14;
    private static final Map<String, String> SIGNATURES = new LinkedHashMap<>();

    static {
        SIGNATURES.put("PK\u0003\u0004", "this is a ZIP archive or a spreadsheet workbook, not text");
        SIGNATURES.put("PK\u0005\u0006", "this is an empty ZIP archive, not text");
        SIGNATURES.put("\u001f\u008b", "this is a gzip archive, not text");
        SIGNATURES.put("7z\u00bc\u00af", "this is a 7z archive, not text");
        SIGNATURES.put("\u00d0\u00cf\u0011\u00e0", "this is an old spreadsheet workbook, not text");
        SIGNATURES.put("%PDF", "this is a PDF document, not text");
        SIGNATURES.put("\u0089PNG", "this is a picture, not text");
        SIGNATURES.put("\u00ff\u00d8\u00ff", "this is a picture, not text");
        SIGNATURES.put("GIF8", "this is a picture, not text");
        SIGNATURES.put("BM", "this is a picture or another binary file, not text");
        SIGNATURES.put("RIFF", "this is a video or another binary file, not text");
    }

    private ForeignFormat() {}

    /** Refuses a file whose first part shows that it holds no table. */
    public static void refuse(SourceFile file) throws InputException {
        byte[] head = file.head();
        String latin = new String(head, 0, Math.min(head.length, LOOKED_AT), StandardCharsets.ISO_8859_1);
        if (latin.isBlank()) {
            throw new InputException(
                    ErrorCode.EMPTY, Origin.of(file.name()), "the file is empty", "Export the capture again");
        }
        if (SOUNDS.stream().anyMatch(latin::startsWith) && isBinary(latin)) {
            throw new InputException(
                    ErrorCode.SOUND_FORMAT,
                    Origin.of(file.name()),
                    "this is a sound file, but none of the kind that can be read",
                    SAVE_AS_WAV);
        }
        for (Map.Entry<String, String> signature : SIGNATURES.entrySet()) {
            if (latin.startsWith(signature.getKey()) && isBinary(latin)) {
                throw new InputException(
                        ErrorCode.NOT_AN_EXPORT, Origin.of(file.name()), signature.getValue(), EXPORT_AS_TEXT);
            }
        }
        refusePage(file.name(), latin);
        refuseZeroBytes(file.name(), head);
        if (isBinary(latin)) {
            throw new InputException(
                    ErrorCode.NOT_AN_EXPORT,
                    Origin.of(file.name()),
                    "this is no text: it holds bytes that no text has",
                    EXPORT_AS_TEXT);
        }
    }

    private static void refusePage(String name, String latin) throws InputException {
        String text = latin.stripLeading();
        if (PAGES.stream().anyMatch(p -> text.regionMatches(true, 0, p, 0, p.length()))) {
            throw new InputException(
                    ErrorCode.NOT_AN_EXPORT,
                    Origin.of(name),
                    "this is a web page or another marked-up document, not a table of samples",
                    "Was a page saved in place of the file behind it? Fetch the export itself");
        }
    }

    private static void refuseZeroBytes(String name, byte[] head) throws InputException {
        int zero = 0;
        while (zero < head.length && head[zero] != 0) {
            zero++;
        }
        boolean cut = zero > 0 && zero < head.length;
        if (cut && !isBinary(new String(head, 0, Math.min(zero, LOOKED_AT), StandardCharsets.ISO_8859_1))) {
            int line = 1;
            for (int i = 0; i < zero; i++) {
                line += head[i] == '\n' ? 1 : 0;
            }
            throw zeroBytes(name, line);
        }
    }

    /** What the user is told about zero bytes inside a text. */
    public static InputException zeroBytes(String name, int line) {
        return new InputException(
                ErrorCode.DAMAGED,
                Origin.of(name, line),
                "there are zero bytes where text should be: the file is damaged or was not copied to its end",
                "Copy it from the instrument again");
    }

    /** More than one control character in a hundred characters, line ends and tabs aside. */
    private static boolean isBinary(String latin) {
        long control = 0;
        for (int i = 0; i < latin.length(); i++) {
            char c = latin.charAt(i);
            control += c < ' ' && c != '\n' && c != '\r' && "\t\f\u001a".indexOf(c) < 0 ? 1 : 0;
        }
        return control * 100 > latin.length();
    }
}
