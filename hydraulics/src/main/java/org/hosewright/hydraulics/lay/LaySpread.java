package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;

/** A lay's answer with the standard errors that the kit's losses and nozzles leave in it.
 *
 * <p>Slopes are adjoints from the factor of the lay's network; where a reducer or an eductor is in one of several
 * states they are central differences of the whole solve. A wye's and a monitor's own losses are taken as exact.
 *
 * @param pump pump pressure; exact where it was asked for of a pump that holds it
 * @param flows flow of each open outlet, by its name
 * @param assumed what was taken for granted about the errors, as sentences
 */
public record LaySpread(Known<Pressure> pump, Map<String, Known<Flow>> flows, List<String> assumed) {
    /** An error that is a smaller share of its answer is what the last digits of a factor leave of none [1]. */
    private static final double ROUNDING = 1e-9;

    /** The pump pressure's name among the answers: no outlet bears it. */
    static final String PUMP = "";

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
        List<String> ids = terms.stream().map(LayTerm::id).toList();
        Parts parts = terms.isEmpty()
                ? outlet -> List.of()
                : LaySlopes.find(lay, ask, best, ids)
                        .map(slopes -> Parts.of(slopes, terms))
                        .orElseGet(() -> Differences.of(lay, ask, terms));
        Map<String, Known<Flow>> flows = new LinkedHashMap<>();
        for (LayState.AtTip tip : best.open()) {
            double error = error(parts.of(tip.outlet().id()), ids, errors);
            flows.put(tip.outlet().id(), known(tip.state().flow(), new Flow(error)));
        }
        Pressure pump = new Pressure(error(parts.of(PUMP), ids, errors));
        return new LaySpread(known(best.pump(), pump), flows, assumed(terms, errors));
    }

    /** The standard error of an answer from what each number's own error leaves in it. */
    private static double error(List<Double> parts, List<String> ids, LossErrors errors) {
        double variance = 0;
        for (int i = 0; i < parts.size(); i++) {
            for (int j = 0; j < parts.size(); j++) {
                double together = i == j
                        ? 1
                        : errors.findCorrelation(ids.get(i), ids.get(j)).orElse(0.0);
                variance += parts.get(i) * parts.get(j) * together;
            }
        }
        return Math.sqrt(Math.max(0, variance));
    }

    private static <Q extends Quantity> Known<Q> known(Q value, Q error) {
        return error.si() > ROUNDING * Math.abs(value.si()) ? Known.of(value, error) : Known.of(value);
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

    /** What one standard error of each number makes of an answer: of an outlet's flow, or of the pump pressure. */
    interface Parts {
        List<Double> of(String answer);

        static Parts of(LaySlopes slopes, List<LayTerm> terms) {
            return answer -> terms.stream()
                    .map(term -> term.error()
                            * (answer.equals(PUMP) ? slopes.ofPump(term.id()) : slopes.ofFlow(answer, term.id())))
                    .toList();
        }
    }

    /** The lay solved with each number a little more and a little less. */
    record Differences(List<LayState> up, List<LayState> down) implements Parts {
        static Differences of(Lay lay, Ask ask, List<LayTerm> terms) {
            List<LayState> up = new ArrayList<>();
            List<LayState> down = new ArrayList<>();
            for (LayTerm term : terms) {
                up.add(LaySolver.solve(term.shift().apply(lay), ask));
                down.add(LaySolver.solve(term.back().apply(lay), ask));
            }
            return new Differences(up, down);
        }

        @Override
        public List<Double> of(String answer) {
            List<Double> parts = new ArrayList<>();
            for (int i = 0; i < up.size(); i++) {
                double more = figure(up.get(i), answer);
                double less = figure(down.get(i), answer);
                parts.add((more - less) / (2 * LayTerm.SHARE));
            }
            return parts;
        }

        static double figure(LayState state, String answer) {
            return answer.equals(PUMP)
                    ? state.pump().pascals()
                    : state.getTip(answer).state().flow().cubicMetresPerSecond();
        }
    }
}
