package clipwitness.figure.canvas;

/** Texts cut to the room they have. */
public final class Texts {
    private static final String ELLIPSIS = "…";

    private Texts() {}

    /** A text, or as much of its beginning and its end as fits, with an ellipsis between: labels often differ at their ends. */
    public static String fitted(Canvas canvas, String text, double size, boolean bold, double room) {
        if (canvas.textWidth(text, size, bold) <= room) {
            return text;
        }
        int[] letters = text.codePoints().toArray();
        for (int kept = letters.length - 1; kept > 0; kept--) {
            int end = kept / 3;
            String shorter = new String(letters, 0, kept - end).stripTrailing()
                    + ELLIPSIS
                    + new String(letters, letters.length - end, end).stripLeading();
            if (canvas.textWidth(shorter, size, bold) <= room) {
                return shorter;
            }
        }
        return "";
    }
}
