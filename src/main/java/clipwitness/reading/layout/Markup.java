package clipwitness.reading.layout;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** Takes the markup of typesetting and of web pages off a heading: {@code $V_{BE}\,[\mathrm{mV}]$} reads as {@code V_BE [mV]}. */
final class Markup {
    private static final Pattern TYPESET = Pattern.compile("\\$|\\\\[A-Za-z,;: ()]|[_^]\\{");
    private static final Pattern WEB = Pattern.compile("</?(?:sub|sup|i|b|em|strong|span)>|&[A-Za-z]+;");
    private static final Map<Pattern, String> OF_TYPESETTING = new LinkedHashMap<>();
    private static final Map<Pattern, String> OF_WEB = new LinkedHashMap<>();

    static {
        typeset("\\\\(?:micro|mu)(?![A-Za-z])\\s*", "µ");
        typeset("\\\\milli(?![A-Za-z])\\s*", "m");
        typeset("\\\\nano(?![A-Za-z])\\s*", "n");
        typeset("\\\\pico(?![A-Za-z])\\s*", "p");
        typeset("\\\\kilo(?![A-Za-z])\\s*", "k");
        typeset("\\\\mega(?![A-Za-z])\\s*", "M");
        typeset("\\\\volt(?![A-Za-z])", "V");
        typeset("\\\\ampere(?![A-Za-z])", "A");
        typeset("\\\\second(?![A-Za-z])", "s");
        typeset("\\\\hertz(?![A-Za-z])", "Hz");
        typeset("\\\\(?:ohm|Omega)(?![A-Za-z])", "Ω");
        typeset("\\\\(?:left|right|big|Big)(?=[(\\[)\\]])", "");
        typeset("\\\\q?quad(?![A-Za-z])|\\\\[,;: ]|~", " ");
        typeset("\\\\[A-Za-z]+\\s*(?=\\{)|\\\\(?:rm|it|bf|sf)(?![A-Za-z])\\s*", "");
        typeset("\\\\[()]|[${}]", "");
        web("(?i)<sub>\\s*([^<]*?)\\s*</sub>", "_$1");
        web("(?i)<sup>\\s*([^<]*?)\\s*</sup>", "^$1");
        web("</?(?:i|b|em|strong|span)>", "");
        web("&(?:micro|mu);", "µ");
        web("&(?:Omega|ohm);", "Ω");
        web("&nbsp;", " ");
    }

    private Markup() {}

    /** The text without markup; as it is where it holds none. */
    static String stripped(String text) {
        String plain = WEB.matcher(text).find() ? replaced(text, OF_WEB) : text;
        return TYPESET.matcher(plain).find() ? replaced(plain, OF_TYPESETTING) : plain;
    }

    private static String replaced(String text, Map<Pattern, String> by) {
        String left = text;
        for (Map.Entry<Pattern, String> markup : by.entrySet()) {
            left = markup.getKey().matcher(left).replaceAll(markup.getValue());
        }
        return left;
    }

    private static void typeset(String pattern, String replacement) {
        OF_TYPESETTING.put(Pattern.compile(pattern), replacement);
    }

    private static void web(String pattern, String replacement) {
        OF_WEB.put(Pattern.compile(pattern), replacement);
    }
}
