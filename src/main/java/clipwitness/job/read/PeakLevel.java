package clipwitness.job.read;

import clipwitness.job.Stimulus;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Level of a stimulus: a peak amplitude, unless {@code rms} or {@code pp} follows. */
final class PeakLevel {
    private static final Pattern SUFFIXED =
            Pattern.compile("(?<level>.*?)\\s?(?<kind>rms|pp|p-p|pk-pk|peak|pk)", Pattern.CASE_INSENSITIVE);

    /** What a wave of peak amplitude 1 measures; the RMS is that of a sine. */
    private static final Map<String, Double> PER_PEAK =
            Map.of("rms", Math.sqrt(0.5), "pp", 2.0, "p-p", 2.0, "pk-pk", 2.0, "peak", 1.0, "pk", 1.0);

    private PeakLevel() {}

    /**
     * Peak amplitude in V; a fault and nothing where the field holds none.
     *
     * @param field what was written
     * @param range range of the level as written
     * @param shape shape of the stimulus
     */
    static OptionalDouble of(Field field, AllowedRange range, String shape) {
        Matcher suffixed = SUFFIXED.matcher(field.text());
        if (!suffixed.matches()) {
            return field.number(range);
        }
        String kind = suffixed.group("kind").toLowerCase(Locale.ROOT);
        if (kind.equals("rms") && !shape.equals(Stimulus.SINE)) {
            field.fault(
                    field.quoted() + " is the RMS of a wave that is no sine",
                    "Write its peak amplitude, for example 100 mV");
            return OptionalDouble.empty();
        }
        OptionalDouble level = new Field(field.where(), suffixed.group("level"), field.faults()).number(range);
        return level.isPresent() ? OptionalDouble.of(level.getAsDouble() / PER_PEAK.get(kind)) : level;
    }
}
