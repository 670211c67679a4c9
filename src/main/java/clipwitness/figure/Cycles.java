package clipwitness.figure;

import clipwitness.capture.Samples;
import clipwitness.compare.rule.WaveSetting;
import clipwitness.figure.chart.Axis;
import clipwitness.figure.chart.Extent;
import clipwitness.measure.CycleTrace;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import java.util.Arrays;

/** Mean cycles as curves over time. */
final class Cycles {
    private Cycles() {}

    /** Period of a wave that has a cycle, in s; 1 where its frequency is not known, so that time counts in periods. */
    static double period(WaveformResult wave) {
        return wave.get(WaveformQuantity.FREQUENCY)
                .asValue()
                .map(f -> 1 / f.number())
                .or(() -> wave.spectrum().map(s -> 1 / s.frequency()))
                .orElse(1.0);
    }

    /** Time axis of the first wave's period. */
    static Axis timeAxis(FigureContext context, WaveSetting setting, int steps) {
        double period = period(setting.waves().values().iterator().next());
        return context.axes().exact(context.say("axis.time"), Unit.SECOND, new Extent(0, period), steps);
    }

    /** A cycle with its last bin again before the first and its first again after the last, so that it spans the whole period. */
    static Samples closed(Samples swing) {
        int bins = swing.size();
        double[] closed = new double[bins + 2];
        Arrays.setAll(closed, i -> swing.at((i - 1 + bins) % bins));
        return Samples.of(closed);
    }

    /** Times of a closed cycle's bins, in s. */
    static Samples times(CycleTrace cycle, double period) {
        int bins = cycle.swing().size();
        double[] times = new double[bins + 2];
        Arrays.setAll(times, i -> (i - 0.5) / bins * period);
        return Samples.of(times);
    }

    /** A cycle at a phase, between its bins along straight lines. */
    static double at(Samples swing, double share) {
        int bins = swing.size();
        double place = share * bins - 0.5;
        int before = (int) Math.floor(place);
        double part = place - before;
        return (1 - part) * swing.at(Math.floorMod(before, bins)) + part * swing.at(Math.floorMod(before + 1, bins));
    }
}
