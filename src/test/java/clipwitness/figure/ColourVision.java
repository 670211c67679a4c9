package clipwitness.figure;

import java.awt.Color;
import java.util.stream.IntStream;

/**
 * How eyes see colours. Vision without one kind of cone: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, A Physiologically-based Model for Simulation
 * of Color Vision Deficiency, IEEE Transactions on Visualization and Computer Graphics 15 (2009), severity 1.0, applied to linear sRGB.
 */
enum ColourVision {
    /** All three kinds of cones. */
    USUAL,
    /** Without the cones for long waves. */
    PROTANOPIA,
    /** Without the cones for middle waves. */
    DEUTERANOPIA,
    /** Without the cones for short waves. */
    TRITANOPIA;

    /** Linear sRGB to CIE XYZ (IEC 61966-2-1), white of D65. */
    private static final double[][] XYZ = {
        {0.4124564, 0.3575761, 0.1804375}, {0.2126729, 0.7151522, 0.0721750}, {0.0193339, 0.1191920, 0.9503041}
    };

    private double[][] seen() {
        return switch (this) {
            case USUAL -> new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
            case PROTANOPIA ->
                new double[][] {
                    {0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}
                };
            case DEUTERANOPIA ->
                new double[][] {
                    {0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}
                };
            case TRITANOPIA ->
                new double[][] {
                    {1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}
                };
        };
    }

    /** Difference of two colours as these eyes see them: CIE 1976, distance in L*a*b*; 2.3 is just noticed. */
    double difference(Color one, Color other) {
        double[] a = lab(times(seen(), linear(one)));
        double[] b = lab(times(seen(), linear(other)));
        return Math.sqrt(IntStream.range(0, 3)
                .mapToDouble(i -> (a[i] - b[i]) * (a[i] - b[i]))
                .sum());
    }

    /** Contrast of a colour with white, 1 to 21 (WCAG 2.2, contrast ratio). */
    static double contrastWithWhite(Color color) {
        double[] rgb = linear(color);
        return 1.05 / (0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2] + 0.05);
    }

    private static double[] linear(Color color) {
        float[] parts = color.getRGBColorComponents(null);
        return IntStream.range(0, 3)
                .mapToDouble(i -> parts[i])
                .map(v -> v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4))
                .toArray();
    }

    private static double[] times(double[][] matrix, double[] vector) {
        return IntStream.range(0, 3)
                .mapToDouble(i -> matrix[i][0] * vector[0] + matrix[i][1] * vector[1] + matrix[i][2] * vector[2])
                .map(v -> Math.max(0, Math.min(1, v)))
                .toArray();
    }

    private static double[] lab(double[] rgb) {
        double[] f = IntStream.range(0, 3)
                .mapToDouble(i -> {
                    double white = XYZ[i][0] + XYZ[i][1] + XYZ[i][2];
                    double t = (XYZ[i][0] * rgb[0] + XYZ[i][1] * rgb[1] + XYZ[i][2] * rgb[2]) / white;
                    return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
                })
                .toArray();
        return new double[] {116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])};
    }
}
