package clipwitness.signal;

import java.util.Map;
import java.util.function.BinaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.differentiation.DerivativeStructure;

/** The models of the NIST data sets, differentiated by their own arithmetic. */
final class NistModel {
    /** A model: parameters, and x as a constant. */
    private interface Formula {
        DerivativeStructure of(DerivativeStructure x, DerivativeStructure... b);
    }

    private static final Map<String, Formula> MODELS = Map.of(
            "Misra1a",
                    (x, b) -> b[0].multiply(
                            one(x).subtract(b[1].multiply(x).negate().exp())),
            "Chwirut2", (x, b) -> b[0].multiply(x).negate().exp().divide(b[1].add(b[2].multiply(x))),
            "DanWood", (x, b) -> b[0].multiply(x.log().multiply(b[1]).exp()),
            "Lanczos3", (x, b) -> decay(x, b[0], b[1]).add(decay(x, b[2], b[3])).add(decay(x, b[4], b[5])),
            "Gauss1",
                    (x, b) ->
                            decay(x, b[0], b[1]).add(bell(x, b[2], b[3], b[4])).add(bell(x, b[5], b[6], b[7])),
            "Thurber", (x, b) -> polynomial(x, b[0], b[1], b[2], b[3]).divide(polynomial(x, one(x), b[4], b[5], b[6])),
            "MGH09",
                    (x, b) -> b[0].multiply(x.multiply(x).add(x.multiply(b[1])))
                            .divide(x.multiply(x).add(x.multiply(b[2])).add(b[3])));

    private NistModel() {}

    /** The model of a data set. */
    static NonlinearFit.Regression of(String set) {
        Formula formula = MODELS.get(set);
        return (x, parameters, gradient) -> {
            int n = parameters.length;
            DerivativeStructure[] b = IntStream.range(0, n)
                    .mapToObj(k -> new DerivativeStructure(n, 1, k, parameters[k]))
                    .toArray(DerivativeStructure[]::new);
            DerivativeStructure y = formula.of(new DerivativeStructure(n, 1, x), b);
            System.arraycopy(y.getAllDerivatives(), 1, gradient, 0, n);
            return y.getValue();
        };
    }

    private static DerivativeStructure one(DerivativeStructure like) {
        return like.getField().getOne();
    }

    private static DerivativeStructure decay(
            DerivativeStructure x, DerivativeStructure height, DerivativeStructure rate) {
        return height.multiply(rate.multiply(x).negate().exp());
    }

    private static DerivativeStructure bell(
            DerivativeStructure x, DerivativeStructure height, DerivativeStructure centre, DerivativeStructure width) {
        DerivativeStructure away = x.subtract(centre).divide(width);
        return height.multiply(away.multiply(away).negate().exp());
    }

    private static DerivativeStructure polynomial(DerivativeStructure x, DerivativeStructure... coefficients) {
        BinaryOperator<DerivativeStructure> horner =
                (sum, next) -> sum.multiply(x).add(next);
        return IntStream.range(0, coefficients.length)
                .mapToObj(i -> coefficients[coefficients.length - 1 - i])
                .reduce(horner)
                .orElseThrow();
    }
}
