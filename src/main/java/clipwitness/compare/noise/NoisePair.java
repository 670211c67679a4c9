package clipwitness.compare.noise;

import clipwitness.measure.noise.HumLine;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Noise of two states under one condition.
 *
 * @param from before
 * @param to   after
 */
public record NoisePair(NoiseAtCondition from, NoiseAtCondition to) {
    /** Multiples of the mains whose lines stand out of the noise in either state and were looked for in both, rising. */
    public Set<Integer> lines() {
        Set<Integer> common = orders(from, false);
        common.retainAll(orders(to, false));
        Set<Integer> standing = orders(from, true);
        standing.addAll(orders(to, true));
        common.retainAll(standing);
        return common;
    }

    private static Set<Integer> orders(NoiseAtCondition setting, boolean standing) {
        return setting.hum().stream()
                .filter(l -> !standing || l.stands())
                .map(HumLine::order)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The setting whose hum was refused, the earlier one first. */
    Optional<NoiseAtCondition> withoutHum() {
        return Stream.of(from, to).filter(s -> s.humRefused().isPresent()).findFirst();
    }
}
