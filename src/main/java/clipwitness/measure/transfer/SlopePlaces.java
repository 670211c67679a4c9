package clipwitness.measure.transfer;

/** Places on the upper side of a transfer curve at which its slope is looked at, in constant ratio up to the input's peak, with their stretches. */
final class SlopePlaces {
    static final int COUNT = 64;

    private final double innermost;
    private final double[] inputs = new double[COUNT];
    private final Ladder[] ladders = new Ladder[COUNT];

    /**
     * Places.
     *
     * @param innermost the first of them over the amplitude
     * @param amplitude of the input, V
     */
    SlopePlaces(Stretches stretches, double innermost, double amplitude) {
        this.innermost = innermost;
        for (int i = 0; i < COUNT; i++) {
            inputs[i] = amplitude * Math.pow(innermost, 1 - i / (COUNT - 1.0));
            ladders[i] = stretches.at(inputs[i]);
        }
    }

    /** The first of them over the amplitude. */
    double innermost() {
        return innermost;
    }

    /** Distance of a place from the input's mean, V. */
    double input(int place) {
        return inputs[place];
    }

    /** Stretches around a place. */
    Ladder ladder(int place) {
        return ladders[place];
    }
}
