package clipwitness.figure.chart;

import java.util.List;

/** Something drawn over the axes of a plot. */
public interface Layer {
    /** Draws it. What lies beyond the axes is the layer's to cut off. */
    void paint(Plot plot);

    /** Its lines on the canvas, uncertainty bars included, so that labels can keep clear of them. */
    default List<Trace> traces(Plot plot) {
        return List.of();
    }
}
