package clipwitness.reading.layout;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a column's name says that its values are. */
public enum ColumnRole {
    TIME("time t zeit dauer zeitachse temps tempo tiempo tijd tid czas x-axis xaxis timestamp timestamps время 时间 時間"),
    INDEX("n no no. nr nr. index idx sample samples sequence point points # count x punkt row number num"),
    VOLTAGE(
            "voltage volt volts spannung tension tensione tensión spanning napięcie u v vf vr ud uf vd vce vbe vds vgs vin vout"
                    + " va vb vc ve vg vk vp vs vz vcb vbc veb vsd vgd vak vgk ube uce ucb uds ugs uak uin uout"),
    CURRENT("current strom courant corrente corriente stroom prąd i if ir id ic ib amps ampere"
            + " ie is ig ia ik iz ix iin iout ids ice isd iak"),
    FREQUENCY(
            "frequency frequencies freq freqs frequenz fréquence frecuencia frequenza frequentie frekvens częstotliwość f hz"),
    /** Another quantity that a table goes over, but no record and no curve. */
    OTHER(
            "temperature temperatures temperatur température temperatura temp distance entfernung abstand angle winkel phase gain "
                    + "bin bins code codes harmonic harmonics harmonische order ordnung wavelength wellenlänge position pressure druck "
                    + "speed rpm drehzahl weight humidity feuchte date datum day tag"),
    /** The number of the segment that a row belongs to. */
    SEGMENT("segment segments sweep sweeps frame frames segmentnr segment# abschnitt"),
    UNKNOWN("");

    private static final int SHORTEST_PART = 3;
    /** The letter of a voltage or a current with a subscript: V_out, I_load. */
    private static final Pattern SUBSCRIPT = Pattern.compile("(?<letter>[uvi])_\\w{1,8}");

    private static final Pattern ABSCISSA = Pattern.compile("(?i)x[ _-]?(?:val(?:ue)?s?|data|achse)");

    /** Words in lower case, each with a blank before and after it. */
    private final String words;

    ColumnRole(String words) {
        this.words = " " + words + " ";
    }

    /** The role that a name tells, units left out. Short words count only where they are the whole name. */
    static ColumnRole of(String name) {
        String lower = name.toLowerCase(Locale.ROOT).strip();
        for (ColumnRole role : values()) {
            if (role.has(lower)) {
                return role;
            }
        }
        Matcher subscript = SUBSCRIPT.matcher(lower);
        if (subscript.matches()) {
            return subscript.group("letter").equals("i") ? CURRENT : VOLTAGE;
        }
        String letters = lower.replace("_", "").replaceFirst("(?:\\d+)?(?:[\\s(].*)?$", ""); // I1, Ic (at 10 µA), V_BE
        for (ColumnRole role : List.of(VOLTAGE, CURRENT)) {
            if (role.has(letters)) {
                return role;
            }
        }
        List<String> parts = Arrays.asList(lower.split("[^\\p{L}]+", -1));
        for (ColumnRole role : List.of(TIME, VOLTAGE, CURRENT, FREQUENCY, OTHER)) {
            if (parts.stream().anyMatch(p -> p.length() >= SHORTEST_PART && role.has(p))) {
                return role;
            }
        }
        return UNKNOWN;
    }

    /** Whether a name says that the others stand over these values, and not what they are. */
    static boolean isAbscissa(String name) {
        return ABSCISSA.matcher(name).matches();
    }

    /** Whether records over time and curves have such columns. */
    boolean isOfSamples() {
        return this == TIME || this == INDEX || this == VOLTAGE || this == CURRENT;
    }

    private boolean has(String word) {
        return !word.isEmpty() && word.indexOf(' ') < 0 && words.contains(" " + word + " ");
    }
}
