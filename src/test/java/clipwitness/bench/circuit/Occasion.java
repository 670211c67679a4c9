package clipwitness.bench.circuit;

import java.util.List;

/**
 * How a job is captured.
 *
 * @param frequency test tone in Hz
 * @param gains     positions of the gain control in percent; none where there is one setting without a control
 * @param runs      times that each is set
 * @param input     whether the input is captured beside the output
 * @param traced    whether the devices are traced and the sheet describes the clipper
 * @param mains     line frequency in Hz that the sheet states
 */
record Occasion(double frequency, List<Integer> gains, int runs, boolean input, boolean traced, int mains) {
    static final Occasion FULL = new Occasion(1_000, List.of(0, 25, 50, 75, 100), 1, true, false, 50);

    Occasion gains(Integer... positions) {
        return new Occasion(frequency, List.of(positions), runs, input, traced, mains);
    }

    Occasion runs(int number) {
        return new Occasion(frequency, gains, number, input, traced, mains);
    }

    Occasion outputOnly() {
        return new Occasion(frequency, gains, runs, false, traced, mains);
    }

    Occasion withTraces() {
        return new Occasion(frequency, gains, runs, input, true, mains);
    }

    Occasion at(double hertz) {
        return new Occasion(hertz, gains, runs, input, traced, mains);
    }
}
