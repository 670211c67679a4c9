package clipwitness.report.model;

import clipwitness.figure.canvas.Figure;
import java.util.regex.Pattern;

/**
 * A picture that the template may place.
 *
 * @param name    name for the {@code data} attribute of the {@code object} element
 * @param kind    the name without the number that a further figure of the same kind carries: of {@code cycles-2} it is
 *                {@code cycles}
 * @param title   what it shows
 * @param finding what it says
 */
public record ShownFigure(String name, String kind, String title, String finding) {
    private static final Pattern NUMBER = Pattern.compile("-\\d+$");

    /** A picture by its name. */
    public static ShownFigure of(String name, Figure figure) {
        return new ShownFigure(name, NUMBER.matcher(name).replaceFirst(""), figure.title(), figure.finding());
    }
}
