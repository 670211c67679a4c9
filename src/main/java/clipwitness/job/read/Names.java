package clipwitness.job.read;

import java.util.List;
import java.util.regex.Pattern;

/** Names that the user gives to states and settings. */
final class Names {
    private static final Pattern SENSIBLE = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N} ._+-]{0,59}(?<! )");

    private Names() {}

    /** Notes a fault where a name cannot be used in a table, a file or a sentence. */
    static void check(SheetNode node, String name, String noun) {
        if (!SENSIBLE.matcher(name).matches()) {
            node.fault(
                    NameWords.quoted(name) + " cannot name a " + noun,
                    "Use letters, digits, space and . _ + -, at most 60 of them, the first a letter or digit");
        }
    }

    /** Notes a fault where a name has a meaning of its own. */
    static void refuse(SheetNode node, String name, List<String> taken) {
        if (taken.contains(name)) {
            node.fault(
                    "a state cannot be called " + NameWords.quoted(name),
                    "Rename it; " + NameWords.all(taken) + " are keys of a rail");
        }
    }
}
