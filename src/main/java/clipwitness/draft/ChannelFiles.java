package clipwitness.draft;

import clipwitness.draft.name.ChannelMark;
import clipwitness.draft.name.Guess;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Files that hold one channel each of one record: of one length and interval, named alike but for the channel. Words for input and output tell which is which; of numbers
 * the lower one is the input, unless its wave is the distorted one.
 */
final class ChannelFiles {
    /** Files round their interval differently. */
    private static final double SAME_INTERVAL = 1e-6;
    /** Distortion of a usable sine generator, percent. */
    private static final double CLEAN = 1;
    /** By how many times the output is then more distorted. */
    private static final double TIMES = 3;

    private final Map<String, Pair> byOutput = new LinkedHashMap<>();
    private final Map<String, ChannelMark> marks = new LinkedHashMap<>();

    /**
     * Two files of one record.
     *
     * @param input  file of the input
     * @param output file of the output
     * @param reason why they belong together, and which is which
     */
    record Pair(DraftedExport input, DraftedExport output, String reason) {}

    ChannelFiles(List<DraftedExport> sources) {
        Map<String, DraftedExport> first = new LinkedHashMap<>();
        for (DraftedExport source : sources) {
            Optional<ChannelMark> mark = ChannelMark.of(source.path());
            if (mark.isEmpty() || source.content().channels().size() != 1) {
                continue;
            }
            DraftedExport other = first.putIfAbsent(mark.get().rest(), source);
            if (other != null && sameRecord(source.content(), other.content())) {
                join(other, source);
            }
        }
    }

    private static boolean sameRecord(Content a, Content b) {
        return a.samples() == b.samples() && Math.abs(a.interval() / b.interval() - 1) < SAME_INTERVAL;
    }

    private void join(DraftedExport a, DraftedExport b) {
        ChannelMark markA = ChannelMark.of(a.path()).orElseThrow();
        ChannelMark markB = ChannelMark.of(b.path()).orElseThrow();
        if (markA.channel() == markB.channel() || (markA.named() && isCleaner(a, b) == isCleaner(b, a))) {
            return; // not two channels, or words that may mean something else: mod in, mod out
        }
        boolean ordered = markA.channel() < markB.channel();
        DraftedExport low = ordered ? a : b;
        DraftedExport high = ordered ? b : a;
        boolean swapped = isCleaner(high, low);
        Pair pair = swapped
                ? new Pair(high, low, "one record in two files, of which this is the distorted one")
                : new Pair(low, high, "one record in two files, " + low.path() + " holds the lower channel");
        byOutput.put(pair.output().path(), pair);
        marks.put(a.path(), markA);
        marks.put(b.path(), markB);
    }

    private static boolean isCleaner(DraftedExport clean, DraftedExport distorted) {
        OptionalDouble least = clean.content().channels().get(0).thd();
        OptionalDouble most = distorted.content().channels().get(0).thd();
        return least.isPresent()
                && most.isPresent()
                && least.getAsDouble() < CLEAN
                && most.getAsDouble() > TIMES * least.getAsDouble();
    }

    /** Whether a file is the input of another. */
    boolean isInput(DraftedExport source) {
        return byOutput.values().stream().anyMatch(p -> p.input().equals(source));
    }

    /** The file of the input that belongs to a file. */
    Optional<Guess<DraftedExport>> inputOf(DraftedExport source) {
        return Optional.ofNullable(byOutput.get(source.path())).map(p -> new Guess<>(p.input(), p.reason()));
    }

    /** The mark of a file that belongs to such a pair. */
    Optional<ChannelMark> mark(DraftedExport source) {
        return Optional.ofNullable(marks.get(source.path()));
    }
}
