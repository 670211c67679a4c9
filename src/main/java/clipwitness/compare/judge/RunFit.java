package clipwitness.compare.judge;

import clipwitness.measure.Contribution;
import clipwitness.measure.Source;
import java.util.List;
import java.util.Optional;

/**
 * What the differences between runs are made of: variance of a run = (slope x knob)² + scatter² + noise. Most likely knob and scatter for
 * normal errors, by Fisher scoring on the variances of the settings, each with its degrees of freedom; the job sheet's knob takes part like
 * a variance that was found with eight. The scatter is what is no knob: where no end stop was set twice, which shows it alone, it is
 * taken only if the runs are less likely without it at a level of 95 %.
 *
 * @param knob           standard deviation of the gain control, percent of rotation
 * @param knobFreedom    its degrees of freedom
 * @param scatter        standard deviation of a run that is no knob, in the figure's unit, 0 or more
 * @param scatterFreedom its degrees of freedom, above 0
 */
record RunFit(double knob, double knobFreedom, double scatter, double scatterFreedom) {
    /** Degrees of freedom that the sheet's figure counts as (measurement book, section 5). */
    private static final double OF_THE_SHEET = 8;

    /** Of chi squared with one degree of freedom, on one side: twice the gain in log-likelihood beyond which a scatter is real. */
    private static final double REAL = 2.706;

    private static final int ROUNDS = 80;
    private static final double LEAST = 1e-12;

    /** A job in which nothing was set twice. */
    static RunFit ofSheet(double sheet) {
        return new RunFit(sheet, OF_THE_SHEET, 0, 1);
    }

    /** Knob and scatter from the level's runs. */
    static RunFit ofLevel(double sheet, List<RunVariance> runs) {
        return runs.isEmpty() ? ofSheet(sheet) : best(new Search(runs, sheet * sheet, OF_THE_SHEET, true));
    }

    /** Scatter of another figure, the knob as the levels show it. */
    RunFit ofFigure(List<RunVariance> runs) {
        return runs.isEmpty()
                ? new RunFit(knob, knobFreedom, 0, 1)
                : best(new Search(runs, knob * knob, knobFreedom, false));
    }

    private static RunFit best(Search search) {
        boolean alone = search.runs.stream().anyMatch(r -> r.slope() == 0);
        search.settle(false);
        double without = search.logLikelihood();
        RunFit knobAlone = search.result();
        search.settle(true);
        return alone || 2 * (search.logLikelihood() - without) > REAL ? search.result() : knobAlone;
    }

    /** The scatter as a contribution to a figure of so many runs. */
    Optional<Contribution> scatter(double runs) {
        return scatter > 0
                ? Optional.of(new Contribution(Source.REPEATABILITY, scatter / Math.sqrt(runs), scatterFreedom))
                : Optional.empty();
    }

    /** The knob as a contribution to a figure of such a slope and so many runs. */
    Optional<Contribution> knob(double slope, double runs) {
        return slope * knob > 0
                ? Optional.of(new Contribution(Source.KNOB, slope * knob / Math.sqrt(runs), knobFreedom))
                : Optional.empty();
    }

    /** The search for both variances. */
    private static final class Search {
        private final List<RunVariance> runs;
        private final double prior;
        private final double priorFreedom;
        private final boolean freeKnob;
        private final double floor;
        private double knob;
        private double scatter;

        Search(List<RunVariance> runs, double prior, double priorFreedom, boolean freeKnob) {
            this.runs = runs;
            this.prior = prior;
            this.priorFreedom = priorFreedom;
            this.freeKnob = freeKnob;
            double largest = runs.stream()
                    .mapToDouble(r -> Math.max(r.variance(), r.noise()))
                    .max()
                    .orElse(0);
            this.floor = Math.max(LEAST * largest, Double.MIN_NORMAL);
        }

        void settle(boolean withScatter) {
            knob = prior;
            scatter = withScatter
                    ? runs.stream().mapToDouble(RunVariance::variance).average().orElse(0)
                    : 0;
            for (int i = 0; i < ROUNDS; i++) {
                if (freeKnob) {
                    scoreKnob();
                }
                if (withScatter) {
                    scoreScatter();
                }
            }
        }

        private double expected(RunVariance r) {
            return Math.max(floor, r.slope() * r.slope() * knob + scatter + r.noise());
        }

        /** Degrees of freedom that a setting's runs say of the knob: those of its share of the variance. */
        private double knobFreedom(RunVariance r) {
            double share = r.slope() * r.slope() * knob / expected(r);
            return r.freedom() * share * share;
        }

        private void scoreKnob() {
            double sum = priorFreedom * prior;
            double freedom = priorFreedom;
            for (RunVariance r : runs) {
                if (r.slope() > 0) {
                    double weight = knobFreedom(r);
                    sum += weight * (r.variance() - r.noise() - scatter) / (r.slope() * r.slope());
                    freedom += weight;
                }
            }
            knob = Math.max(sum, priorFreedom * prior) / freedom;
        }

        private void scoreScatter() {
            double sum = 0;
            double weights = 0;
            for (RunVariance r : runs) {
                double weight = weight(r);
                sum += weight * (r.variance() - expected(r));
                weights += weight;
            }
            scatter = Math.max(0, scatter + sum / weights);
        }

        /** Relative to the floor, so that squares of small variances stay numbers. */
        private double weight(RunVariance r) {
            double relative = floor / expected(r);
            return r.freedom() * relative * relative;
        }

        double logLikelihood() {
            double sum = freeKnob && prior > 0 ? priorFreedom * (Math.log(knob / prior) + prior / knob) : 0;
            for (RunVariance r : runs) {
                sum += r.freedom() * (Math.log(expected(r)) + r.variance() / expected(r));
            }
            return -sum / 2;
        }

        RunFit result() {
            double weights = runs.stream().mapToDouble(this::weight).sum();
            double ofScatter = scatter / floor * (scatter / floor) * weights;
            double ofKnob = freeKnob
                    ? priorFreedom
                            + runs.stream().mapToDouble(this::knobFreedom).sum()
                    : priorFreedom;
            return new RunFit(
                    Math.sqrt(knob), ofKnob, Math.sqrt(scatter), scatter > 0 ? Math.max(ofScatter, LEAST) : 1);
        }
    }
}
