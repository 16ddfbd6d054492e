package org.hosewright.hydraulics.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Quantity;

/** One loss that a line's resistance rests on, each id once.
 *
 * @param id the hose, discharge or appliance
 * @param weight how often it counts: the length of a hose [m], the number of an appliance [1]
 * @param error its standard error, where stated [Pa s2/m7 or Pa s2/m6]
 */
record LossTerm(String id, double weight, OptionalDouble error) {

    /** The standard error that this loss alone would leave in the line's resistance [Pa s2/m6]. */
    double weighted() {
        return weight * error.orElse(0);
    }

    static List<LossTerm> listOf(Line line) {
        Map<String, LossTerm> terms = new LinkedHashMap<>();
        for (Run run : line.runs()) {
            add(
                    terms,
                    "hose",
                    run.hose().id(),
                    run.length().metres(),
                    run.hose().loss());
        }
        line.discharge()
                .loss()
                .ifPresent(loss -> add(terms, "discharge", line.discharge().id(), 1, loss));
        for (Run run : line.runs()) {
            if (run.end().isPresent() && run.end().get().loss() instanceof ApplianceLoss.Quadratic quadratic) {
                add(terms, "appliance", run.end().get().id(), 1, quadratic.loss());
            }
        }
        return new ArrayList<>(terms.values());
    }

    private static void add(
            Map<String, LossTerm> terms, String kind, String id, double weight, Known<? extends Quantity> loss) {
        OptionalDouble error =
                loss.standardError().isPresent() ? OptionalDouble.of(loss.standardErrorSi()) : OptionalDouble.empty();
        terms.merge(
                kind + " " + id,
                new LossTerm(id, weight, error),
                (a, b) -> new LossTerm(id, a.weight + b.weight, a.error));
    }
}
