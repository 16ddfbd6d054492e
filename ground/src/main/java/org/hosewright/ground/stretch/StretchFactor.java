package org.hosewright.ground.stretch;

import java.util.List;
import org.hosewright.hydraulics.quantity.Numbers;

/** How much hose a company uses for what it planned: learnt from its own stretches, log-normal, drawn toward 1 while they
 * are few.
 *
 * <p>Before any stretch the logarithm of the company's factor is taken as 0 give or take {@link #BETWEEN}, and single
 * stretches scatter about it by {@link #WITHIN}; the company's own scatter takes over as stretches come in.
 *
 * @param median factor of the next stretch that half of them stay below [1]
 * @param logSpread standard deviation of the logarithm of the next stretch's factor [1]
 * @param logError standard error of the logarithm of the company's own factor [1]
 * @param stretches how many it was learnt from
 * @source A. Gelman and others, Bayesian Data Analysis, 3rd edition, 2013, chapter 2 (normal mean) and section 3.3
 *     (scaled inverse chi-square for the scatter)
 */
public record StretchFactor(double median, double logSpread, double logError, int stretches) {
    /** Between companies, of the logarithm [1]; from common practice: one in three is more than a fifth off. */
    public static final double BETWEEN = 0.2;

    /** Between a company's own stretches, of the logarithm, before it has any [1]; from common practice. */
    public static final double WITHIN = 0.15;

    /** How many stretches the figure for the scatter is worth. */
    private static final double WITHIN_WORTH = 4;

    /** What is known without a stretch. */
    public static final StretchFactor UNLEARNT = of(List.of());

    public StretchFactor {
        Numbers.requirePositive("factor", median);
        Numbers.requireNotNegative("spread of the factor", logSpread);
        Numbers.requireNotNegative("error of the factor", logError);
    }

    /** The factor that a company's stretches tell, each counted by how well it is measured. */
    public static StretchFactor of(List<StretchRecord> records) {
        double scatter = scatter(records, mean(records, WITHIN * WITHIN));
        double precision = 1 / (BETWEEN * BETWEEN) + precision(records, scatter);
        double centre = mean(records, scatter) * precision(records, scatter) / precision;
        return new StretchFactor(
                Math.exp(centre), Math.sqrt(scatter + 1 / precision), Math.sqrt(1 / precision), records.size());
    }

    /** Variance of the company's own stretches about their mean, what measuring adds taken off. */
    private static double scatter(List<StretchRecord> records, double mean) {
        double squares = 0;
        for (StretchRecord record : records) {
            double off = record.logFactor() - mean;
            squares += Math.max(0, off * off - record.logVariance());
        }
        return (WITHIN_WORTH * WITHIN * WITHIN + squares) / (WITHIN_WORTH + Math.max(0, records.size() - 1));
    }

    private static double mean(List<StretchRecord> records, double scatter) {
        double sum = 0;
        for (StretchRecord record : records) {
            sum += record.logFactor() / (scatter + record.logVariance());
        }
        return records.isEmpty() ? 0 : sum / precision(records, scatter);
    }

    private static double precision(List<StretchRecord> records, double scatter) {
        double sum = 0;
        for (StretchRecord record : records) {
            sum += 1 / (scatter + record.logVariance());
        }
        return sum;
    }
}
