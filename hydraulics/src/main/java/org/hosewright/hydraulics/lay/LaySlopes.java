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
 * <p>At a fixed speed the pump's pressure moves along its curve with the sum of the flows, and the intake's with it.
 *
 * @validFor answers that are smooth there: no tip just about to run dry, no rule on its threshold
 */
final class LaySlopes {
    /** The share of a flow that the intake's slope is taken over [1]: its curve is smooth. */
    private static final double STEP = 1e-4;

    private final List<String> terms;
    private final Map<String, Double> pump = new LinkedHashMap<>();
    private final Map<String, Map<String, Double>> flows = new LinkedHashMap<>();
    private double pump_Pa = Double.NEGATIVE_INFINITY;

    private LaySlopes(List<String> terms) {
        this.terms = terms;
    }

    /** The slopes; absent where a reducer or an eductor is in one of several states, or where nothing is smooth.
     *
     * @param best the lay solved for what is asked
     */
    static Optional<LaySlopes> find(Lay laid, Ask ask, LayState best, List<String> terms) {
        Lay lay = Bursts.opened(laid);
        boolean slides = lay.pump() instanceof PumpMode.FixedSpeed;
        boolean loses = !best.parts().bursts().isEmpty();
        if (LayNetwork.hasStates(lay) || (slides && loses)) {
            return Optional.empty();
        }
        LaySlopes slopes = new LaySlopes(terms);
        if (ask instanceof Ask.AtPump) {
            slopes.held(lay, best.pump());
            if (lay.pump() instanceof PumpMode.FixedSpeed fixed) {
                slopes.slid(lay, fixed, best);
            }
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

    /** From slopes at a held pressure to those of a pump that slides along its curve: dP = s dQ, dQ = Q' dk + Q'' dP. */
    private void slid(Lay lay, PumpMode.FixedSpeed fixed, LayState best) {
        LayNetwork.Solved solved = LayNetwork.solved(lay, best.pump());
        double fall = PumpSlide.slope(fixed.rated(), best.flow()) + intakeSlope(lay, best);
        double byPump = 0;
        for (String outlet : flows.keySet()) {
            byPump += solved.byPump(solved.ofTip(outlet));
        }
        for (String term : terms) {
            double byTerm = 0;
            for (String outlet : flows.keySet()) {
                byTerm += ofFlow(outlet, term);
            }
            pump.put(term, fall * byTerm / (1 - fall * byPump));
        }
        flows.forEach((outlet, by) -> {
            double more = solved.byPump(solved.ofTip(outlet));
            by.replaceAll((term, held) -> held + more * ofPump(term));
        });
    }

    /** How the intake's pressure falls with the flow [Pa s/m3]. */
    private static double intakeSlope(Lay lay, LayState best) {
        double step = STEP * best.flow().cubicMetresPerSecond();
        return lay.supply()
                .map(Feeding::new)
                .map(feeding -> (feeding.intake_Pa(best.flow().cubicMetresPerSecond() + step)
                                - feeding.intake_Pa(best.flow().cubicMetresPerSecond() - step))
                        / (2 * step))
                .orElse(0.0);
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
