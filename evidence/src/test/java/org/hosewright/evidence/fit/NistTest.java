package org.hosewright.evidence.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The optimiser against NIST's certified nonlinear regressions, from both starts.
 *
 * <p>source: NIST/ITL Statistical Reference Datasets, nonlinear regression.
 */
class NistTest {
    /** Significant digits of the certified parameters; NIST certifies 11. */
    private static final double PARAMETER_DIGITS = 9;

    /** Significant digits of the certified standard deviations. */
    private static final double DEVIATION_DIGITS = 8;

    private static final double SHARE_LEFT = 1e-22;

    @ParameterizedTest
    @CsvSource({
        "Misra1a, RISING",
        "BoxBOD, RISING",
        "Lanczos3, THREE_FADING",
        "MGH17, TWO_FADING",
        "Rat43, GROWTH",
        "Thurber, CUBIC_OVER_CUBIC"
    })
    void certifiedFitsMatchesPublished(String name, NistModel model) {
        check(name, NistSet.transcribed(name), model);
    }

    @Test
    @Tag("real-data")
    void certifiedFitsOfTheLargeSetsMatchesPublished() throws IOException {
        Path folder = Path.of(System.getProperty("hosewright.realData"), "nist");
        check("Chwirut1", NistSet.distributed(folder.resolve("Chwirut1.dat")), NistModel.FADING_OVER_LINE);
        check("Hahn1", NistSet.distributed(folder.resolve("Hahn1.dat")), NistModel.CUBIC_OVER_CUBIC);
    }

    private static void check(String name, NistSet set, NistModel model) {
        for (int start = 1; start <= 2; start++) {
            Blocks problem = set.problem(model);
            Point from = new Point(set.start(start), new double[problem.size()][0]);
            Minimum minimum = new LevenbergMarquardt(problem, SHARE_LEFT, 0).solve(from);
            double parameters = digits(minimum.point().unknowns(), set.certified());
            double deviations = digits(deviations(minimum, problem), set.certifiedDeviations());
            System.out.println(name + " from start " + start + ": " + parameters + " and " + deviations + " digits");
            assertThat(parameters).as(name + " parameters from start " + start).isGreaterThan(PARAMETER_DIGITS);
            assertThat(deviations).as(name + " deviations from start " + start).isGreaterThan(DEVIATION_DIGITS);
        }
    }

    private static double[] deviations(Minimum minimum, Blocks problem) {
        double variance = minimum.cost() / (problem.size() - problem.unknowns());
        double[][] covariance = minimum.information().covariance();
        double[] deviations = new double[covariance.length];
        for (int j = 0; j < deviations.length; j++) {
            deviations[j] = Math.sqrt(variance * covariance[j][j]);
        }
        return deviations;
    }

    /** The fewest significant digits that agree. */
    private static double digits(double[] found, double[] certified) {
        double fewest = 11;
        for (int j = 0; j < found.length; j++) {
            double off = Math.abs(found[j] - certified[j]) / Math.abs(certified[j]);
            fewest = Math.min(fewest, -Math.log10(Math.max(off, 1e-11)));
        }
        return fewest;
    }
}
