package clipwitness.report.model;

import java.util.List;

/**
 * The traced devices.
 *
 * @param summary   whether the devices explain what was measured, a sentence; empty where nothing was predicted
 * @param sentences what they say, a sentence each; empty where no device was traced
 * @param figures   figures of the devices, a few devices a table
 * @param pairs     the best pairs among them
 * @param predicted predicted and measured clip levels, a group for each state
 */
public record DevicesPart(
        String summary, List<String> sentences, List<Table> figures, List<Table> pairs, List<GroupTable> predicted) {
    /** Copies what it is given. */
    public DevicesPart {
        sentences = List.copyOf(sentences);
        figures = List.copyOf(figures);
        pairs = List.copyOf(pairs);
        predicted = List.copyOf(predicted);
    }
}
