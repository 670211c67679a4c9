package clipwitness.measure.match;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jgrapht.alg.matching.blossom.v5.KolmogorovWeightedPerfectMatching;
import org.jgrapht.alg.matching.blossom.v5.ObjectiveSense;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/**
 * Devices in pairs: of all ways to pair as many as can be, the one whose mismatches have the smallest sum (minimum-weight perfect matching;
 * V. Kolmogorov, Blossom V, Math. Prog. Comp. 1 (2009) 43-67).
 *
 * @param pairs pairs, smallest mismatch first
 * @param left  devices without a partner, in the order given
 */
public record Pairing(List<MatchedPair> pairs, List<String> left) {
    /** Weight of an edge that is not to be used, V: more than any sum of mismatches. */
    private static final double NEVER = 1e4;

    /** Copies what it is given. */
    public Pairing {
        pairs = List.copyOf(pairs);
        left = List.copyOf(left);
    }

    /**
     * Pairs devices.
     *
     * @param devices devices, names unlike one another
     */
    public static Pairing of(List<NamedDevice> devices) {
        Map<DefaultWeightedEdge, MatchedPair> candidates = new HashMap<>();
        List<MatchedPair> pairs = matched(devices, candidates).stream()
                .sorted(Comparator.comparingDouble(Pairing::weight))
                .toList();
        List<String> left = devices.stream()
                .map(NamedDevice::name)
                .filter(n -> pairs.stream().noneMatch(p -> p.devices().contains(n)))
                .toList();
        return new Pairing(pairs, left);
    }

    /** Every device is joined to every other; two that cannot be compared by an edge heavier than all others, which is not used in the end. */
    private static List<MatchedPair> matched(
            List<NamedDevice> devices, Map<DefaultWeightedEdge, MatchedPair> candidates) {
        SimpleWeightedGraph<Integer, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        int count = devices.size() + devices.size() % 2;
        IntStream.range(0, count).forEach(graph::addVertex);
        for (int i = 0; i < count; i++) {
            for (int k = i + 1; k < count; k++) {
                DefaultWeightedEdge edge = graph.addEdge(i, k);
                boolean leftOver = k == devices.size();
                Optional<MatchedPair> pair = leftOver ? Optional.empty() : Mismatch.of(devices.get(i), devices.get(k));
                pair.ifPresent(p -> candidates.put(edge, p));
                graph.setEdgeWeight(
                        edge, leftOver ? 0 : pair.map(Pairing::weight).orElse(NEVER));
            }
        }
        return new KolmogorovWeightedPerfectMatching<>(graph, ObjectiveSense.MINIMIZE)
                .getMatching().getEdges().stream()
                        .map(candidates::get)
                        .filter(Objects::nonNull)
                        .toList();
    }

    private static double weight(MatchedPair pair) {
        return pair.mismatch().value().orElseThrow();
    }
}
