package clipwitness.figure;

import java.awt.BasicStroke;
import java.awt.Color;

/**
 * How a state looks on every figure.
 *
 * @param label  what the report calls the state
 * @param color  colour
 * @param line   line
 * @param marker shape of its points
 */
record StateStyle(String label, Color color, BasicStroke line, MarkerShape marker) {}
