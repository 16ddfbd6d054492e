package org.hosewright.hydraulics.lay;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.network.Derivatives;
import org.hosewright.hydraulics.quantity.Pressure;

/** How a lay's pump pressure and flows move with each number of the kit: one adjoint solve an answer, all from the
 * factor of the network that the lay is.
 *
 * <p>Where a pressure or a flow is asked for, each group of lines has its pump pressure as an added unknown and the tip
 * that is shortest as the added equation; the pump stands at the highest and the others are gated down to their own.
 *
 * @validFor answers that are smooth there: no tip just about to run dry, no rule on its threshold; a pump that keeps
 *     its pressure
 */
final class LaySlopes {
    private final List<String> terms;
    private final Map<String, Double> pump = new LinkedHashMap<>();
    private final Map<String, Map<String, Double>> flows = new LinkedHashMap<>();
    private double pump_Pa = Double.NEGATIVE_INFINITY;

    private LaySlopes(List<String> terms) {
        this.terms = terms;
    }

    /** The slopes; absent where a reducer or an eductor is in one of several states, or where nothing is smooth. */
    static Optional<LaySlopes> find(Lay laid, Ask ask, List<String> terms) {
        Lay lay = Bursts.opened(laid);
        if (LayNetwork.hasStates(lay)) {
            return Optional.empty();
        }
        LaySlopes slopes = new LaySlopes(terms);
        if (ask instanceof Ask.AtPump at) {
            slopes.held(lay, at.pressure());
            return Optional.of(slopes);
        }
        for (LineGroup group : LineGroup.listOf(lay)) {
            if (group.isOpen() && !slopes.asked(group, ask)) {
                return Optional.empty();
            }
        }
        return Optional.of(slopes);
    }

    /** Of the pump pressure by a number [Pa per SI unit of it]. */
    double ofPump(String term) {
        return pump.getOrDefault(term, 0.0);
    }

    /** Of an open outlet's flow by a number [m3/s per SI unit of it]. */
    double ofFlow(String outlet, String term) {
        return flows.getOrDefault(outlet, Map.of()).getOrDefault(term, 0.0);
    }

    private void held(Lay lay, Pressure at) {
        LayNetwork.Solved solved = LayNetwork.solved(lay, at);
        for (End.Outlet outlet : lay.outlets()) {
            if (!outlet.shut()) {
                Derivatives of = solved.ofTip(outlet.id());
                terms.forEach(term -> put(outlet, term, solved.by(of, term)));
            }
        }
    }

    private void put(End.Outlet outlet, String term, double slope) {
        flows.computeIfAbsent(outlet.id(), none -> new LinkedHashMap<>()).put(term, slope);
    }

    /** One group of lines at what it needs; false where more pump brings its shortest tip no more. */
    private boolean asked(LineGroup group, Ask ask) {
        double need_Pa = group.need_Pa(ask);
        LayNetwork.Solved solved = LayNetwork.solved(group.alone(), new Pressure(need_Pa));
        End.Outlet shortest = shortest(group, ask, solved);
        Derivatives of = solved.ofTip(shortest.id());
        double byPump = solved.byPump(of);
        if (!(byPump > 0)) {
            return false;
        }
        Map<String, Double> own = new LinkedHashMap<>();
        for (String term : terms) {
            own.put(term, (wanted(shortest, ask, term) - solved.by(of, term)) / byPump);
        }
        for (End.Outlet outlet : group.outlets()) {
            if (!outlet.shut()) {
                Derivatives tip = solved.ofTip(outlet.id());
                terms.forEach(term ->
                        put(outlet, term, solved.by(tip, term) + solved.byPump(tip) * own.getOrDefault(term, 0.0)));
            }
        }
        if (need_Pa > pump_Pa) {
            pump_Pa = need_Pa;
            pump.putAll(own);
        }
        return true;
    }

    private static End.Outlet shortest(LineGroup group, Ask ask, LayNetwork.Solved solved) {
        End.Outlet shortest = group.outlets().get(0);
        double least = Double.POSITIVE_INFINITY;
        for (End.Outlet outlet : group.outlets()) {
            if (!outlet.shut()) {
                double share = solved.state().flow_m3s("tip " + outlet.id()) / Asked.flow_m3s(outlet, ask);
                if (share < least) {
                    least = share;
                    shortest = outlet;
                }
            }
        }
        return shortest;
    }

    /** How the flow that is asked for moves with a number: at a pressure it is the nozzle's own. */
    private static double wanted(End.Outlet outlet, Ask ask, String term) {
        boolean own = ask instanceof Ask.AtTip
                && outlet.nozzle().flow().isPresent()
                && outlet.nozzle().tipName(outlet.setting()).equals(term);
        return own
                ? Asked.flow_m3s(outlet, ask)
                        / outlet.nozzle().flow().get().value().value()
                : 0;
    }
}
