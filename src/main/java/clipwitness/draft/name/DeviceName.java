package clipwitness.draft.name;

import java.util.Optional;
import java.util.regex.Pattern;

/** Name of a traced device, from the name of its export. */
final class DeviceName {
    private static final Pattern DATE = Pattern.compile(
            "(?<!\\d)(?:19|20)\\d{2}[-._]?[01]\\d[-._]?[0-3]\\d(?:[ T_-]*[0-2]\\d[-:h._]?[0-5]\\d(?:[-:m._]?[0-5]\\d)?)?(?!\\d)");
    private static final Pattern TAKE =
            Pattern.compile("(?i)(?<![\\p{L}\\p{N}])(?:take|run|repeat|rep|wdh)[ _.-]?\\d{1,3}(?!\\d)|\\(\\d{1,2}\\)");
    private static final Pattern EDGES = Pattern.compile("^[\\s_.,;+-]+|[\\s_.,;+-]+$");
    /** A place on a board: it is one device, whatever the number of the file. */
    private static final Pattern PLACE = Pattern.compile("(?i)(?:D|Q|T|U|Z|CR|LED|TR)\\d{1,3}");

    private static final Pattern NUMBER = Pattern.compile("#?\\d{1,3}");

    private DeviceName() {}

    /** The device; empty where neither file nor folder names one. */
    static Optional<Guess<String>> of(String path) {
        String[] parts = path.split("/", -1);
        String name = named(PathWords.stem(parts[parts.length - 1]));
        String folder = "";
        for (int i = parts.length - 2; i >= 0 && folder.isEmpty(); i--) {
            folder = named(parts[i]);
        }
        if (!name.isEmpty() && !NUMBER.matcher(name).matches()) {
            return Optional.of(new Guess<>(name, "the name of the file"));
        }
        if (!folder.isEmpty() && !NUMBER.matcher(folder).matches()) {
            boolean one = name.isEmpty() || PLACE.matcher(folder).matches();
            return Optional.of(
                    new Guess<>(one ? folder : folder + " #" + name.replace("#", ""), "the name of the folder"));
        }
        return name.isEmpty() ? Optional.empty() : Optional.of(new Guess<>(name, "the name of the file"));
    }

    /** What is left of a name without dates, takes and words for curves and states. */
    private static String named(String name) {
        String left = TAKE.matcher(DATE.matcher(name).replaceAll(" ")).replaceAll(" ");
        left = without(left, WordList.of(KindWord.JUNCTION));
        left = without(left, WordList.generic());
        left = without(left, Pattern.compile(WordList.BEGIN + "(?:sweep|csv|log)" + WordList.END));
        for (StateClass state : StateClass.values()) {
            left = without(left, WordList.of(state));
        }
        return EDGES.matcher(EDGES.matcher(left).replaceAll("").replaceAll("\\s+", " "))
                .replaceAll("");
    }

    private static String without(String name, Pattern words) {
        return Pattern.compile(words.pattern(), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)
                .matcher(name)
                .replaceAll(" ");
    }
}
