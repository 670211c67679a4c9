package clipwitness.compare.finding;

import java.util.List;

/**
 * What differs between two states, under one condition.
 *
 * @param subject  states and condition
 * @param tellings level, distortion, or where neither differs anywhere asymmetry, crest factor or null depth; one or more
 */
public record Differs(Subject subject, List<Telling> tellings) implements Finding {
    /** Copies what it is given. */
    public Differs {
        tellings = List.copyOf(tellings);
    }

    @Override
    public String code() {
        return "differs";
    }

    @Override
    public String word() {
        return words(tellings);
    }

    /** {@code level less, thd equal}. */
    public static String words(List<Telling> tellings) {
        return String.join(
                ", ",
                tellings.stream()
                        .map(t -> t.item().quantity().key() + " " + t.kind().code())
                        .toList());
    }

    @Override
    public List<FindingValue> values() {
        return tellings.stream().map(t -> FindingValue.of(t.item())).toList();
    }
}
