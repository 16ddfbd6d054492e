package org.hosewright.hydraulics.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** How the errors of a line's losses hang together; each standard error stands with its own loss.
 *
 * @param correlations correlation of two errors, by "hose/discharge", "hose/hose" or "hose/nozzle", in either order;
 *     absent counts as 0
 */
public record LossErrors(Map<String, Double> correlations) {
    public static final LossErrors UNCORRELATED = new LossErrors(Map.of());

    /** How far below 0 a variance may come out by rounding, as a share of its terms [1]. */
    private static final double ROUNDING = 1e-12;

    public LossErrors {
        correlations = Collections.unmodifiableMap(new LinkedHashMap<>(correlations));
        correlations.forEach((pair, value) -> {
            if (!(Math.abs(value) <= 1)) {
                throw new InvalidInput("correlation of " + pair, Numbers.plain(value), "a number from -1 to 1", "");
            }
        });
    }

    /** The correlation of two errors, where known. */
    public Optional<Double> findCorrelation(String one, String other) {
        Double found = correlations.get(one + "/" + other);
        return Optional.ofNullable(found == null ? correlations.get(other + "/" + one) : found);
    }

    /** True where at least one number of the line has a standard error. */
    public boolean isStated(Line line) {
        return LossTerm.listOf(line).stream().anyMatch(term -> term.error().isPresent()) || factorError(line) > 0;
    }

    /** The covariance of the line's resistance and its nozzle's flow factor.
     *
     * @throws InvalidInput correlations that cannot all be true at once
     */
    public Spread spread(Line line) {
        List<LossTerm> terms = LossTerm.listOf(line);
        double sum = 0;
        double size = 0;
        double joint = 0;
        for (int i = 0; i < terms.size(); i++) {
            LossTerm one = terms.get(i);
            for (int j = 0; j < terms.size(); j++) {
                double product = one.weighted() * terms.get(j).weighted();
                sum += product
                        * (i == j ? 1 : correlation(one.id(), terms.get(j).id()));
                size += product;
            }
            joint += one.weighted() * factorError(line) * correlation(one.id(), line.tipName());
        }
        double factor = factorError(line) * factorError(line);
        if (sum < -ROUNDING * size || joint * joint > sum * factor + ROUNDING * size * factor) {
            throw new InvalidInput("correlations", correlations.toString(), "values that can hold together", "");
        }
        return new Spread(Math.max(0, sum), factor, joint);
    }

    /** Variance of the line's resistance R = piping + sum of loss times length + appliances [(Pa s2/m6)^2]. */
    public double variance(Line line) {
        return spread(line).resistance();
    }

    /** The line as it likeliest is where the flow at a pump pressure is so many of its standard errors off.
     *
     * <p>Hose losses are scaled together and the nozzle's factor is moved; a line that loses less than its piping
     * alone is not gone to. Where all hose follows a law, the piping takes the change.
     *
     * @param errors count of standard errors; negative for less flow
     */
    public Line shifted(Line line, Pressure pump, double errors) {
        Slopes slopes = Slopes.of(line, LineSolver.atPump(line, pump).flow());
        Spread.Shift shift = spread(line).towards(slopes.flowPerResistance(), slopes.flowPerFactor(), errors);
        double hose = Resistance.ofHose(line);
        Line lost = hose > 0
                ? line.withLossesTimes(Math.max(ROUNDING, 1 + shift.resistance() / hose))
                : line.withPipingMore(shift.resistance());
        return lost.withFlowFactor(slopes.factor() + shift.factor());
    }

    /** What a result says where a discharge's piping is not known. */
    public static String sayUnknown(Discharge discharge) {
        return "The piping loss of " + discharge.id() + " is not known: none is counted.";
    }

    /** What a result says of hose that goes by a law of its bore. */
    public static Optional<String> sayLaw(Run run) {
        return run.hose()
                .law()
                .map(law -> "The loss of " + run.hose().id() + " goes by " + law.says()
                        + ", with its diameter as the bore.");
    }

    /** What a result with these errors rests on without evidence, as sentences. */
    public List<String> listAssumed(Line line) {
        List<String> assumed = new ArrayList<>();
        if (line.discharge().loss().isEmpty()) {
            assumed.add(sayUnknown(line.discharge()));
        }
        line.runs().stream().map(LossErrors::sayLaw).flatMap(Optional::stream).forEach(assumed::add);
        List<String> known = new ArrayList<>();
        for (LossTerm term : LossTerm.listOf(line)) {
            if (term.error().isPresent()) {
                known.add(term.id());
            } else {
                assumed.add("The loss of " + term.id() + " has no stated error: it is taken as exact.");
            }
        }
        if (factorError(line) > 0) {
            known.add(line.tipName());
        }
        assumed.addAll(listIndependent(known));
        return assumed;
    }

    private List<String> listIndependent(List<String> ids) {
        List<String> says = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            for (String other : ids.subList(i + 1, ids.size())) {
                if (findCorrelation(ids.get(i), other).isEmpty()) {
                    says.add("The errors of " + ids.get(i) + " and " + other + " are taken as independent.");
                }
            }
        }
        return says;
    }

    private double correlation(String one, String other) {
        return findCorrelation(one, other).orElse(0.0);
    }

    private static double factorError(Line line) {
        return line.nozzle().flow().isPresent() ? line.nozzle().flow().get().standardErrorSi() : 0;
    }
}
