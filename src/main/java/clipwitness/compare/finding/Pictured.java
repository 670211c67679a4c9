package clipwitness.compare.finding;

import java.util.List;

/**
 * What a picture of two waves shows: level and distortion of one state against the other, under the condition that is drawn.
 *
 * @param subject  states and condition
 * @param tellings level, distortion or both
 */
public record Pictured(Subject subject, List<Telling> tellings) implements Finding {
    /** Copies what it is given. */
    public Pictured {
        tellings = List.copyOf(tellings);
    }

    @Override
    public String code() {
        return "pictured";
    }

    @Override
    public String word() {
        return Differs.words(tellings);
    }

    @Override
    public List<FindingValue> values() {
        return tellings.stream().map(t -> FindingValue.of(t.item())).toList();
    }
}
