package clipwitness.reading;

import clipwitness.reading.layout.Preamble;
import clipwitness.reading.layout.Statement;
import java.util.List;
import java.util.Locale;

/** Whether the preamble says that a channel was AC coupled. */
final class Coupling {
    private Coupling() {}

    /**
     * Whether it does.
     *
     * @param name     the channel's name
     * @param channel  number of the channel among the channels, from 0
     * @param channels number of channels
     */
    static boolean isAc(Preamble preamble, String name, int channel, int channels) {
        for (Statement fact : preamble.facts()) {
            String words = fact.words();
            List<String> values = fact.values();
            boolean named = List.of(words.split(" ")).contains(name.toLowerCase(Locale.ROOT));
            boolean fits = named || values.size() == channels || (values.size() == 1 && channels == 1);
            if (words.contains("coupling") && !words.contains("trig") && fits) {
                String value = values.get(named ? 0 : channel);
                return value.substring(value.lastIndexOf(':') + 1)
                        .strip()
                        .toLowerCase(Locale.ROOT)
                        .matches("ac\\b.*");
            }
        }
        return false;
    }
}
