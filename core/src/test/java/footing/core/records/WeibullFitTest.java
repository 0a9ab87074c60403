package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.money.ReferenceValue;
import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WeibullFitTest {
    private static final double Z95 = new NormalDistribution().inverseCumulativeProbability(0.975);

    private static final double Z90 = new NormalDistribution().inverseCumulativeProbability(0.95);

    static Stream<ReferenceValue> references() {
        return ReferenceValue.read(WeibullFitTest.class, "weibull.tsv");
    }

    @ParameterizedTest
    @MethodSource("references")
    void fit_referenceData_givesTheReferenceValue(ReferenceValue reference) {
        WeibullFit fit = fit(reference.inputs().get(0));
        WeibullFit.Covariance c = fit.covariance();
        reference.check(
                switch (reference.function()) {
                    case "shape" -> fit.shape();
                    case "scale" -> fit.scale();
                    case "logLikelihood" -> fit.logLikelihood();
                    case "mu" -> Math.log(fit.scale());
                    case "sigma" -> 1 / fit.shape();
                    case "muError" -> Math.sqrt(c.mu());
                    case "muVariance" -> c.mu();
                    case "sigmaError" -> Math.sqrt(c.sigma());
                    case "covariance" -> c.both();
                    case "shapeLow95" -> fit.shapeLimits(0.95).low();
                    case "shapeHigh95" -> fit.shapeLimits(0.95).high();
                    case "gain" -> fit.gainOverNoMemory();
                    case "t10" -> fit.quantile(0.1);
                    case "t50" -> fit.quantile(0.5);
                    case "waldScaleLow95" -> fit.scale() * Math.exp(-Z95 * Math.sqrt(c.mu()));
                    case "waldScaleHigh95" -> fit.scale() * Math.exp(Z95 * Math.sqrt(c.mu()));
                    case "waldMuLow90" -> Math.log(fit.scale()) - Z90 * Math.sqrt(c.mu());
                    case "waldMuHigh90" -> Math.log(fit.scale()) + Z90 * Math.sqrt(c.mu());
                    case "waldSigmaLow90" -> Math.exp(-Z90 * fit.shape() * Math.sqrt(c.sigma())) / fit.shape();
                    case "waldSigmaHigh90" -> Math.exp(Z90 * fit.shape() * Math.sqrt(c.sigma())) / fit.shape();
                    case "waldShapeLow95" -> fit.shape() * Math.exp(-Z95 * fit.shape() * Math.sqrt(c.sigma()));
                    case "waldShapeHigh95" -> fit.shape() * Math.exp(Z95 * fit.shape() * Math.sqrt(c.sigma()));
                    case "noMemoryMean" ->
                        new Lives(DataSet.lives(reference.inputs().get(0))).scale(1);
                    case "waldT10Low95" -> wald(fit, 0.1, -Z95);
                    case "waldT10High95" -> wald(fit, 0.1, Z95);
                    case "waldT50Low95" -> wald(fit, 0.5, -Z95);
                    case "waldT50High95" -> wald(fit, 0.5, Z95);
                    default -> throw new AssertionError(reference.function());
                });
    }

    /** The quantile times e^(z·error), the error of μ + σ ln(−ln(1−p)) by the covariance. */
    private static double wald(WeibullFit fit, double p, double z) {
        double w = Math.log(-Math.log1p(-p));
        WeibullFit.Covariance c = fit.covariance();
        return fit.quantile(p) * Math.exp(z * Math.sqrt(c.mu() + 2 * w * c.both() + w * w * c.sigma()));
    }

    private static WeibullFit fit(String id) {
        return WeibullFit.of(DataSet.lives(id)).orElseThrow();
    }

    @Test
    void fit_twoModes_addUpToTheLikelihoodOfCompetingRisks() {
        double both = fit("shock-mode1").logLikelihood() + fit("shock-mode2").logLikelihood();
        assertThat(both).isCloseTo(-81.49797642 - 49.63614498, within(1e-7));
    }

    @Test
    void shapeEstablished_tenFailures_isNotSaid() {
        assertThat(fit("nist").shapeEstablished(0.95)).isFalse();
        assertThat(fit("nist").shapeLimits(0.95).contains(1)).isTrue();
        assertThat(fit("shock").shapeEstablished(0.95)).isTrue();
    }

    @Test
    void fit_entriesForgotten_makesLivesVisiblyLonger() {
        WeibullFit truth = fit("truncated");
        WeibullFit wrong = fit("truncated-forgotten");
        assertThat(wrong.quantile(0.5) - truth.quantile(0.5)).isGreaterThan(20);
    }

    @Test
    void quantileLimits_containTheQuantileAndShrinkWithTheShare() {
        WeibullFit fit = fit("shock");
        Limits wide = fit.quantileLimits(0.5, 0.95);
        Limits narrow = fit.quantileLimits(0.5, 0.8);
        assertThat(wide.low()).isLessThan(narrow.low());
        assertThat(narrow.low()).isLessThan(fit.quantile(0.5));
        assertThat(narrow.high()).isBetween(fit.quantile(0.5), wide.high());
    }

    /** At a limit the best likelihood under that quantile has dropped by half the chi-squared quantile. */
    @Test
    void quantileLimits_atTheLimit_dropTheLikelihoodAsFarAsAsked() {
        List<Life> lives = DataSet.lives("shock");
        WeibullFit fit = fit("shock");
        double low = fit.quantileLimits(0.1, 0.95).low();
        double best = Double.NEGATIVE_INFINITY;
        for (double shape = 0.5; shape < 12; shape += 0.0005) {
            double scale = low / Math.pow(-Math.log1p(-0.1), 1 / shape);
            best = Math.max(best, new Lives(lives).logLikelihood(shape, scale));
        }
        assertThat(fit.logLikelihood() - best).isCloseTo(3.841458820694124 / 2, within(1e-6));
    }

    @Test
    void fit_hoursInOtherUnits_scalesTheLifeAndKeepsTheShape() {
        List<Life> minutes = DataSet.lives("shock").stream()
                .map(l -> new Life(l.entry() * 60, l.exit() * 60, l.wornOut()))
                .toList();
        WeibullFit scaled = WeibullFit.of(minutes).orElseThrow();
        assertThat(scaled.shape()).isCloseTo(fit("shock").shape(), within(1e-10));
        assertThat(scaled.scale()).isCloseTo(60 * fit("shock").scale(), within(1e-4));
    }

    @Test
    void fit_noneWornOutOrASingleLife_isRefused() {
        assertThat(WeibullFit.of(List.of(new Life(0, 500, false)))).isEmpty();
        assertThat(WeibullFit.of(List.of())).isEmpty();
        assertThat(WeibullFit.of(List.of(new Life(0, 500, true)))).isEmpty();
    }
}
