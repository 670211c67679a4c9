package clipwitness.signal;

/** A curve with parameters, to be fitted to points: y = f(x; p). */
public interface Regression {
    /**
     * Value of the curve, and its derivatives to the parameters.
     *
     * @param x          abscissa
     * @param parameters p
     * @param gradient   receives df/dp, one element a parameter
     * @return f(x; p)
     */
    double at(double x, double[] parameters, double[] gradient);
}
