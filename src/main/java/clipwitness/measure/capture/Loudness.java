package clipwitness.measure.capture;

import clipwitness.capture.Samples;

/**
 * How loud a channel is.
 *
 * @param rms  root mean square about the mean, in the unit of the samples; 0 where all are gaps
 * @param peak largest magnitude, in the same unit; 0 where all are gaps
 */
record Loudness(double rms, double peak) {
    static Loudness of(Samples samples) {
        int count = samples.size() - samples.gaps();
        if (count == 0) {
            return new Loudness(0, 0);
        }
        double sum = 0;
        for (int i = 0; i < samples.size(); i++) {
            sum += Double.isNaN(samples.at(i)) ? 0 : samples.at(i);
        }
        double mean = sum / count;
        double squares = 0;
        for (int i = 0; i < samples.size(); i++) {
            double swing = Double.isNaN(samples.at(i)) ? 0 : samples.at(i) - mean;
            squares += swing * swing;
        }
        return new Loudness(
                Math.sqrt(squares / count), Math.max(Math.abs(samples.minimum()), Math.abs(samples.maximum())));
    }
}
