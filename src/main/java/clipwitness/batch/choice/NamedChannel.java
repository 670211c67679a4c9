package clipwitness.batch.choice;

import clipwitness.capture.Channel;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Channels of an export as a user names them. */
final class NamedChannel {
    private NamedChannel() {}

    /**
     * The channel of a name, else of the same name in other letters, else of a 1-based column number.
     *
     * @param channels channels of the export
     * @param wanted   name or number
     * @param file     the export
     * @param where    where the user wrote the name
     * @throws InputException where there is none
     */
    static Channel of(List<Channel> channels, String wanted, String file, Origin where) throws InputException {
        Optional<Channel> found = first(channels, c -> c.name().equals(wanted))
                .or(() -> first(
                        channels,
                        c -> c.name().equalsIgnoreCase(wanted)
                                || Integer.toString(c.column()).equals(wanted)));
        if (found.isEmpty()) {
            throw new InputException(
                    ErrorCode.WHICH_CHANNEL,
                    where,
                    file + " has no channel '" + wanted + "'",
                    "Its channels are " + names(channels) + "; a number from 1 to " + channels.size() + " serves too");
        }
        return found.get();
    }

    private static Optional<Channel> first(List<Channel> channels, Predicate<Channel> test) {
        return channels.stream().filter(test).findFirst();
    }

    /** Names of channels for a message. */
    static String names(List<Channel> channels) {
        return channels.stream().map(Channel::name).collect(Collectors.joining(", "));
    }
}
