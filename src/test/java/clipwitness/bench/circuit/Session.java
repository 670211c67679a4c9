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
record Session(double frequency, List<Integer> gains, int runs, boolean input, boolean traced, int mains) {
    static final Session FULL = new Session(1_000, List.of(0, 25, 50, 75, 100), 1, true, false, 50);

    Session gains(Integer... positions) {
        return new Session(frequency, List.of(positions), runs, input, traced, mains);
    }

    Session runs(int number) {
        return new Session(frequency, gains, number, input, traced, mains);
    }

    Session outputOnly() {
        return new Session(frequency, gains, runs, false, traced, mains);
    }

    Session withTraces() {
        return new Session(frequency, gains, runs, input, true, mains);
    }

    Session at(double hertz) {
        return new Session(hertz, gains, runs, input, traced, mains);
    }
}
