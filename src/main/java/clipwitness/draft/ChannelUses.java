package clipwitness.draft;

import clipwitness.draft.name.Guess;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Which channels of a record are input and output, where their order does not tell it: by their names, else the clean wave is the input. Of two channels the
 * first is the input unless something says otherwise.
 */
final class ChannelUses {
    private static final Pattern INPUT =
            Pattern.compile("(?i).*(?<!\\p{L})(?:in|input|eingang|gen|generator)(?!\\p{L}).*");
    private static final Pattern OUTPUT = Pattern.compile("(?i).*(?<!\\p{L})(?:out|output|ausgang)(?!\\p{L}).*");
    private static final double CLEAN = 1;
    private static final double TIMES = 3;

    private final boolean swapped;

    /** All rows together: where the first channel is the distorted one in some, and in none the second, it is the output in all. */
    ChannelUses(List<DraftRow> rows) {
        List<List<Content.Heard>> pairs = rows.stream()
                .map(r -> r.source().content().channels())
                .filter(c -> c.size() == 2)
                .toList();
        swapped = pairs.stream().anyMatch(c -> isCleaner(c.get(1), c.get(0)))
                && pairs.stream().noneMatch(c -> isCleaner(c.get(0), c.get(1)));
    }

    private static boolean isCleaner(Content.Heard clean, Content.Heard distorted) {
        return clean.thd().isPresent()
                && distorted.thd().isPresent()
                && clean.thd().getAsDouble() < CLEAN
                && distorted.thd().getAsDouble()
                        > Math.max(CLEAN, TIMES * clean.thd().getAsDouble());
    }

    /** The row with its channels, where they have to be written. */
    DraftRow of(DraftRow row) {
        List<Content.Heard> channels = row.source().content().channels();
        if (channels.size() < 2 || row.kind().value() == DraftKind.JUNCTION) {
            return row;
        }
        return byName(channels)
                .or(() -> channels.size() == 2 ? turned() : byWave(channels))
                .filter(u -> channels.size() > 2 || isTurned(u.value(), channels))
                .map(row::using)
                .orElse(row);
    }

    private static boolean isTurned(DraftRow.ChannelUse use, List<Content.Heard> channels) {
        return use.input().equals("2") || use.input().equals(channels.get(1).name());
    }

    private Optional<Guess<DraftRow.ChannelUse>> turned() {
        return swapped
                ? Optional.of(new Guess<>(
                        new DraftRow.ChannelUse("2", "1"),
                        "the second channel holds the clean wave, the first the distorted"))
                : Optional.empty();
    }

    private static Optional<Guess<DraftRow.ChannelUse>> byName(List<Content.Heard> channels) {
        List<String> inputs = named(channels, INPUT, OUTPUT);
        List<String> outputs = named(channels, OUTPUT, INPUT);
        return inputs.size() == 1 && outputs.size() == 1
                ? Optional.of(new Guess<>(
                        new DraftRow.ChannelUse(inputs.get(0), outputs.get(0)), "the names of the channels"))
                : Optional.empty();
    }

    private static List<String> named(List<Content.Heard> channels, Pattern pattern, Pattern not) {
        return channels.stream()
                .map(Content.Heard::name)
                .filter(n -> pattern.matcher(n.replace('_', ' ')).matches()
                        && !not.matcher(n.replace('_', ' ')).matches())
                .toList();
    }

    /** Of more than two channels the only two that hold a tone, if one of them is clean beside the other. */
    private static Optional<Guess<DraftRow.ChannelUse>> byWave(List<Content.Heard> channels) {
        List<Content.Heard> tones =
                channels.stream().filter(Content.Heard::hasTone).toList();
        if (tones.size() != 2) {
            return Optional.empty();
        }
        boolean turned = isCleaner(tones.get(1), tones.get(0));
        return Optional.of(new Guess<>(
                new DraftRow.ChannelUse(
                        tones.get(turned ? 1 : 0).name(),
                        tones.get(turned ? 0 : 1).name()),
                "the two channels that hold a tone" + (turned ? ", the clean one as the input" : "")));
    }

    /** Whether a row's export has channels that nothing tells apart. */
    static boolean areOpen(DraftRow row) {
        return row.source().content().channels().size() > 2 && row.channels().isEmpty();
    }

    /** Place of the input among a row's channels, from 0; empty where it has none. */
    static Optional<Content.Heard> input(DraftRow row) {
        if (row.inputFile().isPresent()) {
            return row.inputFile().get().value().content().channels().stream().findFirst();
        }
        List<Content.Heard> channels = row.source().content().channels();
        if (row.channels().isPresent()) {
            String input = row.channels().get().value().input();
            return channels.stream()
                    .filter(c -> c.name().toLowerCase(Locale.ROOT).equals(input.toLowerCase(Locale.ROOT))
                            || Integer.toString(1 + channels.indexOf(c)).equals(input))
                    .findFirst();
        }
        return channels.size() == 2 ? Optional.of(channels.get(0)) : Optional.empty();
    }
}
