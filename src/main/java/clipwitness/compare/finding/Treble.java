package clipwitness.compare.finding;

import clipwitness.measure.Measured;
import java.util.ArrayList;
import java.util.List;

/**
 * What became of the treble: the change of the gain at 3 and at 6 kHz once both states are set equally loud at 1 kHz.
 *
 * @param subject states, and the condition under which their responses were captured
 * @param parts   changes at one or both frequencies, rising
 * @param moved   whether one of them counts
 */
public record Treble(Subject subject, List<Part> parts, boolean moved) implements Finding {
    /**
     * A change at one frequency.
     *
     * @param kilohertz frequency, kHz
     * @param change    change of the gain at equal level, dB
     */
    public record Part(int kilohertz, Measured.Value change) {}

    /** Copies what it is given. */
    public Treble {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("treble needs a frequency");
        }
    }

    @Override
    public String code() {
        return "treble";
    }

    @Override
    public String word() {
        return moved ? largest().change().number() < 0 ? "darker" : "brighter" : "same";
    }

    /** The part with the larger change. */
    public Part largest() {
        Part first = parts.get(0);
        Part last = parts.get(parts.size() - 1);
        return Math.abs(first.change().number()) > Math.abs(last.change().number()) ? first : last;
    }

    @Override
    public List<FindingValue> values() {
        List<FindingValue> values = new ArrayList<>();
        parts.forEach(p -> values.add(FindingValue.of("changeAt" + p.kilohertz() + "kHz", p.change())));
        return values;
    }
}
