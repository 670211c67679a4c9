package clipwitness.batch;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Paths in the order in which people count: gain 5 before gain 50, folder by folder, upper and lower case alike. */
final class NaturalOrder implements Comparator<String> {
    private static final Pattern ENDING = Pattern.compile("\\.[^./ ]+$");
    private static final Pattern PIECE = Pattern.compile("\\d+|\\D");

    @Override
    public int compare(String a, String b) {
        List<String> left = pieces(ENDING.matcher(a).replaceFirst(""));
        List<String> right = pieces(ENDING.matcher(b).replaceFirst(""));
        for (int i = 0; i < Math.min(left.size(), right.size()); i++) {
            int order = piece(left.get(i), right.get(i));
            if (order != 0) {
                return order;
            }
        }
        int length = Integer.compare(left.size(), right.size());
        return length != 0 ? length : a.compareTo(b);
    }

    private static List<String> pieces(String text) {
        return PIECE.matcher(text).results().map(MatchResult::group).toList();
    }

    private static int piece(String a, String b) {
        boolean numbers = Character.isDigit(a.charAt(0)) && Character.isDigit(b.charAt(0));
        return numbers ? new BigInteger(a).compareTo(new BigInteger(b)) : a.compareToIgnoreCase(b);
    }
}
