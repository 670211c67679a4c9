package clipwitness.compare.hint;

import java.util.List;
import java.util.Optional;

/**
 * How far something moved by the same amount at several settings.
 *
 * @param order    harmonic
 * @param mean     weighted mean in dB
 * @param expanded its expanded uncertainty, dB
 * @param least    smallest of the changes
 * @param most     largest of them
 */
record CommonShift(int order, double mean, double expanded, double least, double most) {
    /** Least expanded uncertainty that counts, dB: what noise and knob leave out, as drift of the bench. */
    private static final double FLOOR_DB = 0.05;

    /** The common change; empty where one is not known, or lies off the mean by more than its uncertainty and some roughness in dB. */
    static Optional<CommonShift> of(List<Optional<Shift>> settings, double roughness) {
        double weights = 0;
        double sum = 0;
        for (Optional<Shift> s : settings) {
            if (s.isEmpty()) {
                return Optional.empty();
            }
            double weight = 1 / square(Math.max(FLOOR_DB, s.get().expanded()));
            weights += weight;
            sum += weight * s.get().decibels();
        }
        double mean = sum / weights;
        List<Shift> known = settings.stream().flatMap(Optional::stream).toList();
        boolean alike = known.stream().allMatch(s -> Math.abs(s.decibels() - mean) <= s.expanded() + roughness);
        return alike
                ? Optional.of(new CommonShift(
                        1,
                        mean,
                        Math.sqrt(1 / weights),
                        known.stream().mapToDouble(Shift::decibels).min().orElse(mean),
                        known.stream().mapToDouble(Shift::decibels).max().orElse(mean)))
                : Optional.empty();
    }

    /** Whether the smallest and the largest change are the same, written with so many decimals. */
    boolean isOne(int decimals) {
        double digit = Math.pow(10, -decimals);
        return Math.rint(least / digit) == Math.rint(most / digit);
    }

    /** Whether the mean is none within its uncertainty, or written with so many decimals. */
    boolean isStill(int decimals) {
        return Math.abs(mean) <= Math.max(expanded, Math.pow(10, -decimals) / 2);
    }

    /** How far the common change can lie from none, rounded up to so many decimals, dB. */
    double bound(int decimals) {
        double digit = Math.pow(10, -decimals);
        return digit * Math.ceil((Math.abs(mean) + expanded) / digit);
    }

    CommonShift ofOrder(int harmonic) {
        return new CommonShift(harmonic, mean, expanded, least, most);
    }

    private static double square(double x) {
        return x * x;
    }
}
