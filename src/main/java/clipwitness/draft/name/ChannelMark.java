package clipwitness.draft.name;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The part of a name that says which channel of a record a file holds, where the instrument writes one file a channel.
 *
 * @param rest    the path without it: the files of one record are alike in this
 * @param channel number of the channel; 1 for a word for the input, 2 for a word for the output
 * @param word    what stood there
 * @param named   whether it names input or output
 */
public record ChannelMark(String rest, int channel, String word, boolean named) {
    private static final Pattern NUMBERED = Pattern.compile(
            "(?i)(?<!\\p{L})(?:ch|chan|channel|kanal)[ _-]?([1-4])(?!\\d)|(?<![\\p{L}\\p{N}])c([1-4])(?![\\p{L}\\p{N}])");
    private static final Pattern NAMED =
            Pattern.compile("(?i)(?<![\\p{L}\\p{N}])(?:(in|input|eingang)|(out|output|ausgang))(?![\\p{L}\\p{N}])");

    /** The mark of a path; empty where it has none. */
    public static Optional<ChannelMark> of(String path) {
        Matcher numbered = NUMBERED.matcher(path);
        if (numbered.find()) {
            String digit = numbered.group(1) != null ? numbered.group(1) : numbered.group(2);
            return Optional.of(mark(path, numbered, Integer.parseInt(digit), false));
        }
        Matcher named = NAMED.matcher(path);
        return named.find() ? Optional.of(mark(path, named, named.group(1) != null ? 1 : 2, true)) : Optional.empty();
    }

    private static ChannelMark mark(String path, Matcher found, int channel, boolean named) {
        String rest = path.substring(0, found.start()) + "\0" + path.substring(found.end());
        return new ChannelMark(rest, channel, found.group(), named);
    }
}
