package clipwitness.figure.chart;

import java.util.List;

/**
 * One picture of a figure: plots above one another over one x axis.
 *
 * @param heading what this panel shows; empty where the figure has but one
 * @param x       axis of all tiers
 * @param tiers   plots, from the top
 */
public record Panel(String heading, Axis x, List<Tier> tiers) {
    /** Copies what it is given. */
    public Panel {
        tiers = List.copyOf(tiers);
    }

    /** A panel of one plot. */
    public static Panel of(String heading, Axis x, Axis y, List<? extends Layer> layers) {
        return new Panel(heading, x, List.of(new Tier(y, 1, layers)));
    }

    /**
     * One plot of a panel.
     *
     * @param y      axis
     * @param weight its share of the panel's height, over the sum of all weights
     * @param layers what is drawn, first at the bottom
     */
    public record Tier(Axis y, double weight, List<? extends Layer> layers) {
        /** Copies what it is given. */
        public Tier {
            layers = List.copyOf(layers);
        }
    }
}
