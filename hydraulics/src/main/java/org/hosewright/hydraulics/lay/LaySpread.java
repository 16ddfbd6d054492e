package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;

/** A lay's answer with the standard errors that the kit's losses and nozzles leave in it.
 *
 * <p>Slopes are central differences of the whole solve; a wye's and a monitor's own losses are taken as exact.
 *
 * @param pump pump pressure; exact where it was asked for
 * @param flows flow of each open outlet, by its name
 * @param assumed what was taken for granted about the errors, as sentences
 */
public record LaySpread(Known<Pressure> pump, Map<String, Known<Flow>> flows, List<String> assumed) {
    public LaySpread {
        flows = Collections.unmodifiableMap(new LinkedHashMap<>(flows));
        assumed = List.copyOf(assumed);
    }

    /** The spread of a lay's answer.
     *
     * @param best the lay solved for what is asked
     */
    public static LaySpread of(Lay lay, Ask ask, LayState best, LossErrors errors) {
        List<LayTerm> terms = LayTerm.listOf(lay);
        List<LayState> up = new ArrayList<>();
        List<LayState> down = new ArrayList<>();
        for (LayTerm term : terms) {
            up.add(LaySolver.solve(term.shift().apply(lay), ask));
            down.add(LaySolver.solve(term.back().apply(lay), ask));
        }
        Differences differences = new Differences(terms, up, down, errors);
        Map<String, Known<Flow>> flows = new LinkedHashMap<>();
        for (LayState.AtTip tip : best.open()) {
            String id = tip.outlet().id();
            double error =
                    differences.error(state -> state.getTip(id).state().flow().cubicMetresPerSecond());
            flows.put(id, known(tip.state().flow(), new Flow(error)));
        }
        Pressure pump = new Pressure(differences.error(state -> state.pump().pascals()));
        return new LaySpread(known(best.pump(), pump), flows, assumed(terms, errors));
    }

    private static <Q extends Quantity> Known<Q> known(Q value, Q error) {
        return error.si() > 0 ? Known.of(value, error) : Known.of(value);
    }

    private static List<String> assumed(List<LayTerm> terms, LossErrors errors) {
        List<String> says = new ArrayList<>();
        for (int i = 0; i < terms.size(); i++) {
            for (LayTerm other : terms.subList(i + 1, terms.size())) {
                if (errors.findCorrelation(terms.get(i).id(), other.id()).isEmpty()) {
                    says.add(
                            "The errors of " + terms.get(i).id() + " and " + other.id() + " are taken as independent.");
                }
            }
        }
        return says;
    }

    /** The lay solved with each number a little more and a little less. */
    private record Differences(List<LayTerm> terms, List<LayState> up, List<LayState> down, LossErrors errors) {

        /** The standard error of a figure. */
        double error(ToDoubleFunction<LayState> figure) {
            List<Double> parts = new ArrayList<>();
            for (int i = 0; i < terms.size(); i++) {
                double more = figure.applyAsDouble(up.get(i));
                double less = figure.applyAsDouble(down.get(i));
                parts.add((more - less) / (2 * LayTerm.SHARE));
            }
            double variance = 0;
            for (int i = 0; i < parts.size(); i++) {
                for (int j = 0; j < parts.size(); j++) {
                    double together = i == j
                            ? 1
                            : errors.findCorrelation(
                                            terms.get(i).id(), terms.get(j).id())
                                    .orElse(0.0);
                    variance += parts.get(i) * parts.get(j) * together;
                }
            }
            return Math.sqrt(Math.max(0, variance));
        }
    }
}
