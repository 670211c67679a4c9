package clipwitness.job.read;

import java.util.List;

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
    record Entry(String key, YamlNode value, int line) {}

    /** Whether the node says nothing: {@code null}, {@code ~} (YAML 1.2.2, 10.3.2) or a text without letters. */
    default boolean isNull() {
        return false;
    }
}
