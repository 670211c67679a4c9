package clipwitness.job.read;

import clipwitness.capture.LabelText;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.Origin;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A node of the job sheet with the place that messages name.
 *
 * @param node   the node
 * @param origin file, line and path of the node, for example {@code bench.instruments[2].bits}
 * @param faults takes what is wrong with it
 */
record SheetNode(YamlNode node, Origin origin, Faults faults) {
    static String keyPath(String path, String key) {
        return (path.isEmpty() ? "" : path + ".") + NameWords.clipped(key);
    }

    /** Path of an item; people count from 1, indexes from 0. */
    static String itemPath(String path, int index) {
        return path + "[" + (index + 1) + "]";
    }

    SheetNode at(String key, YamlNode.Entry entry) {
        String path = keyPath(origin.column(), key);
        return new SheetNode(entry.value(), new Origin(origin.file(), entry.line(), path), faults);
    }

    /** Notes that the value is none that can be used here. */
    void fault(String what, String remedy) {
        fault(ErrorCode.BAD_VALUE, what, remedy);
    }

    void fault(ErrorCode code, String what, String remedy) {
        faults.add(code, origin, what, remedy);
    }

    /** The same node, its faults going elsewhere. */
    SheetNode reportingTo(Faults other) {
        return new SheetNode(node, origin, other);
    }

    boolean isText() {
        return node instanceof YamlNode.Text;
    }

    /** The node as a text on one line; a fault and nothing where it is something else. */
    Optional<Field> text() {
        return text(LabelText::line);
    }

    /** The node as a text whose lines stay; a fault and nothing where it is something else. */
    Optional<Field> lines() {
        return text(LabelText::lines);
    }

    /** The node as the path of a file, as written; a fault and nothing where it is something else. */
    Optional<Field> path() {
        return text(String::strip);
    }

    private Optional<Field> text(UnaryOperator<String> tidied) {
        if (node instanceof YamlNode.Text text && !text.isNull()) {
            return Optional.of(new Field(origin, tidied.apply(text.text()), faults));
        }
        fault("a single text or number belongs here", insteadOfList().orElse("Write it behind the colon"));
        return Optional.empty();
    }

    /** What to write for a list of one text, or of the two halves of a number that a comma between brackets has split: {@code [4,5 V]}. */
    private Optional<String> insteadOfList() {
        List<String> texts = node instanceof YamlNode.Items list
                ? list.items().stream()
                        .map(i -> i instanceof YamlNode.Text text ? text.text() : "")
                        .toList()
                : List.of();
        boolean split = texts.size() == 2
                && texts.get(0).matches("[+-]?\\d+")
                && texts.get(1).matches("\\d.*");
        return split || (texts.size() == 1 && !texts.get(0).isBlank())
                ? Optional.of("Write " + NameWords.clipped(String.join(".", texts)) + " without brackets")
                : Optional.empty();
    }

    /** The node as a list of nodes; a fault and nothing where it is something else. */
    List<SheetNode> items() {
        if (!(node instanceof YamlNode.Items list)) {
            fault("a list belongs here", "Put the entry in brackets: [...]");
            return List.of();
        }
        List<SheetNode> items = new ArrayList<>();
        for (YamlNode item : list.items()) {
            Origin at = new Origin(origin.file(), item.line(), itemPath(origin.column(), items.size()));
            items.add(new SheetNode(item, at, faults));
        }
        return items;
    }

    /** The node's texts: one, or those of a list. */
    List<Field> texts() {
        List<SheetNode> nodes = isText() ? List.of(this) : items();
        return nodes.stream().map(SheetNode::text).flatMap(Optional::stream).toList();
    }
}
