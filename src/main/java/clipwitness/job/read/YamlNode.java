package clipwitness.job.read;

import java.util.List;
import java.util.regex.Pattern;

/** A node of a YAML text, as written: nothing is turned into numbers or dates here. */
sealed interface YamlNode {
    /** 1-based line on which the node begins. */
    int line();

    /**
     * A scalar.
     *
     * @param text  text as written, quotes and escapes resolved
     * @param plain whether it stands without quotes
     */
    record Text(String text, boolean plain, int line) implements YamlNode {
        private static final List<String> NULLS = List.of("~", "null", "Null", "NULL");

        @Override
        public boolean isNull() {
            return text.isBlank() || (plain && NULLS.contains(text));
        }
    }

    /** A sequence. */
    record Items(List<YamlNode> items, int line) implements YamlNode {
        public Items {
            items = List.copyOf(items);
        }
    }

    /** A mapping; its keys are plain words, each there once. */
    record Mapping(List<Entry> entries, int line) implements YamlNode {
        public Mapping {
            entries = List.copyOf(entries);
        }
    }

    /** An entry of a mapping; the line is that of the key. */
    record Entry(String key, YamlNode value, int line) {
        private static final Pattern WHOLE = Pattern.compile("[+\\-\u2212]?[0-9]+");
        private static final Pattern DIGIT_FIRST = Pattern.compile("[0-9]");
        private static final Pattern THOUSANDS = Pattern.compile("[0-9]{3}(?![0-9])");

        /**
         * Whether this value and the next key are the halves of one number that a comma between braces has split: {@code {level: 0,5 dB}}
         * holds a key {@code 5 dB} without a value.
         */
        boolean isSplitBefore(Entry next) {
            return value instanceof Text whole
                    && whole.plain()
                    && WHOLE.matcher(whole.text()).matches()
                    && DIGIT_FIRST.matcher(next.key).lookingAt()
                    && next.value.isNull();
        }

        /** Whether the key begins with three digits, so that a comma before it may also part thousands. */
        boolean hasThousands() {
            return THOUSANDS.matcher(key).lookingAt();
        }
    }

    /** Whether the node says nothing: {@code null}, {@code ~} (YAML 1.2.2, 10.3.2) or a text without letters. */
    default boolean isNull() {
        return false;
    }
}
