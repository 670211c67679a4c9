package clipwitness.reading;

import clipwitness.capture.Samples;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Tells sweeps of several devices or settings from repeated sweeps of one, by the currents at the same voltages. */
final class SweepsApart {
    /** Warming by 10 K changes the current of a junction at a fixed voltage by less than this factor squared; a family of curves is wider apart. */
    private static final double FACTOR = 1.6;
    /** Currents below this part of the largest may be noise or leakage. */
    private static final double SMALLEST = 0.05;
    /** Voltages are the same within this part of the swept range. */
    private static final double SAME_VOLTAGE = 1e-3;

    private static final int FEWEST = 3;

    private SweepsApart() {}

    /**
     * Whether the currents of a later sweep differ from those of the first.
     *
     * @param voltage swept voltage, V
     * @param current current, A
     * @param starts  rows, from 0, on which the sweeps begin; the first is 0
     */
    static boolean are(Samples voltage, Samples current, List<Integer> starts) {
        double least = SMALLEST * Math.max(Math.abs(current.minimum()), Math.abs(current.maximum()));
        TreeMap<Double, Double> first = new TreeMap<>();
        for (int i = 0; i < starts.get(1); i++) {
            if (!Double.isNaN(current.at(i))) {
                first.putIfAbsent(voltage.at(i), current.at(i));
            }
        }
        double same = SAME_VOLTAGE * (voltage.maximum() - voltage.minimum());
        for (int k = 1; k < starts.size(); k++) {
            int end = k + 1 < starts.size() ? starts.get(k + 1) : voltage.size();
            List<Double> ratios = new ArrayList<>();
            for (int i = starts.get(k); i < end; i++) {
                Map.Entry<Double, Double> near = first.ceilingEntry(voltage.at(i) - same);
                if (near != null && near.getKey() <= voltage.at(i) + same && Math.abs(current.at(i)) > least) {
                    ratios.add(Math.abs(near.getValue() / current.at(i)));
                }
            }
            if (ratios.size() >= FEWEST && apart(ratios)) {
                return true;
            }
        }
        return false;
    }

    private static boolean apart(List<Double> ratios) {
        double median =
                ratios.stream().sorted().skip(ratios.size() / 2).findFirst().orElseThrow();
        return !(median < FACTOR) || !(median > 1 / FACTOR);
    }
}
