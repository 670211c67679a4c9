package clipwitness.fault;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that somebody probably meant. */
public final class Nearest {
    /** Letters that are looked at; the names of keys and columns are shorter. */
    private static final int LONGEST = 60;

    /** Words that are looked at; no sheet has so many. */
    private static final int MOST = 1000;

    private Nearest() {}

    /** The known word with the smallest distance, upper and lower case alike; the first of several. */
    public static Optional<String> to(String word, Collection<String> known) {
        return known.stream().limit(MOST).min(Comparator.comparingInt(k -> distance(fold(word), fold(k))));
    }

    /** The nearest word, if it is near enough to be a typing error: one letter in three, rounded, and always one. */
    public static Optional<String> slipOf(String word, Collection<String> known) {
        return to(word, known)
                .filter(k ->
                        distance(fold(word), fold(k)) <= Math.max(1, (fold(word).length() + 1) / 3));
    }

    private static String fold(String word) {
        return word.substring(0, Math.min(word.length(), LONGEST)).toLowerCase(Locale.ROOT);
    }

    /**
     * Letters to insert, delete, replace or swap with their neighbour to turn one word into another: optimal string alignment
     * distance (Damerau 1964, Levenshtein 1965).
     */
    static int distance(String from, String to) {
        int[][] d = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : step(d, from, to, i, j);
            }
        }
        return d[from.length()][to.length()];
    }

    private static int step(int[][] d, String from, String to, int i, int j) {
        boolean same = from.charAt(i - 1) == to.charAt(j - 1);
        int least = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + (same ? 0 : 1));
        boolean swapped =
                i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
        return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
    }
}
