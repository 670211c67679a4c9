package clipwitness.draft.name;

import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Frequencies and levels in names. */
final class Stimuli {
    private static final String NUMBER = "(\\d+(?:[.,]\\d+)?)";
    private static final Pattern LEVEL = Pattern.compile("(?<![\\p{L}\\p{N}.,])" + NUMBER
            + " ?(mv|µv|uv|v)(?: ?(pp|p-p|vpp|pk-pk|ss|rms|eff|peak|pk|p))?" + WordList.END);
    private static final Pattern FREQUENCY =
            Pattern.compile("(?<![\\p{L}\\p{N}.,])" + NUMBER + " ?(khz|hz|k)" + WordList.END);
    /** The prefix in the place of the decimal mark: 2k2. */
    private static final Pattern INSIDE = Pattern.compile("(?<![\\p{L}\\p{N}.,])(\\d{1,2})k(\\d)" + WordList.END);
    /** A stimulus is weaker; 9 V without more is a supply. */
    private static final double STRONGEST = 3;

    private Stimuli() {}

    /** The level as a captures table writes it. */
    static Optional<Guess<String>> takeLevel(PathWords words) {
        Optional<PathWords.Found> found = words.take(LEVEL);
        return found.flatMap(f -> level(f.match()).map(l -> new Guess<>(l, f.reason())));
    }

    private static Optional<String> level(MatchResult match) {
        String unit = match.group(2).equals("mv") ? "mV" : match.group(2).equals("v") ? "V" : "µV";
        String number = match.group(1).replace(',', '.');
        String kind = match.group(3);
        if (!(Double.parseDouble(number) > 0)) {
            return Optional.empty();
        }
        if (kind == null && unit.equals("V") && !(Double.parseDouble(number) < STRONGEST)) {
            return Optional.empty();
        }
        String suffix = kind == null || kind.matches("p|pk|peak") ? "" : kind.matches("rms|eff") ? " rms" : " pp";
        return Optional.of(number + " " + unit + suffix);
    }

    /** The frequency in Hz. */
    static Optional<Guess<Double>> takeFrequency(PathWords words) {
        Optional<PathWords.Found> inside = words.take(INSIDE);
        if (inside.isPresent()) {
            MatchResult m = inside.get().match();
            return Optional.of(new Guess<>(
                    1000 * Double.parseDouble(m.group(1) + "." + m.group(2)),
                    inside.get().reason()));
        }
        return words.take(FREQUENCY)
                .map(f -> new Guess<>(
                        Double.parseDouble(f.match().group(1).replace(',', '.'))
                                * (f.match().group(2).startsWith("k") ? 1000 : 1),
                        f.reason()))
                .filter(g -> g.value() > 0);
    }
}
