package clipwitness.draft.name;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Numbers by themselves in names, {@code before-50}: positions of the gain control where all of a folder look like it (several, none over 100, one over 10, all
 * multiples of 5), else the instrument's count of files.
 */
final class BareNumbers {
    private static final Pattern NUMBER = Pattern.compile("(?<![\\p{L}\\p{N}.,])(\\d{1,3})(?![\\p{L}\\p{N}])");
    private static final Pattern ALONE = Pattern.compile("\\d{1,3}");
    private static final int WHOLE = 100;
    private static final int DIAL = 10;
    private static final int STEP = 5;

    private BareNumbers() {}

    /** The last number of a file's name that stands by itself. */
    static Optional<Integer> of(PathWords words) {
        List<String> left = words.words(words.size() - 1);
        List<Integer> numbers = left.stream()
                .filter(w -> ALONE.matcher(w).matches())
                .map(Integer::valueOf)
                .toList();
        return numbers.isEmpty() ? Optional.empty() : Optional.of(numbers.get(numbers.size() - 1));
    }

    /** Whether these numbers look like positions of a control. */
    static boolean arePositions(Collection<Integer> numbers) {
        Set<Integer> different = new HashSet<>(numbers);
        int greatest = different.stream().mapToInt(n -> n).max().orElse(0);
        return different.size() > 1
                && greatest > DIAL
                && greatest <= WHOLE
                && different.stream().allMatch(n -> n % STEP == 0);
    }

    /** Takes that number out. */
    static GainText take(PathWords words) {
        return words.take(NUMBER)
                .map(f -> new GainText(
                        Double.parseDouble(f.match().group(1)),
                        GainText.Form.PERCENT,
                        f.reason() + ", a number like those of the other names, which all fit a control"))
                .orElseThrow();
    }
}
