package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.LayState.Station;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.method.HandMethod;
import org.hosewright.hydraulics.method.LossMethod;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** A lay's pump pressure by one of the trade's methods, beside the solved one.
 *
 * <p>The flows are the solved ones; the method takes the hose. Tip, rise, piping and fittings count as they are solved.
 *
 * @param tip the tip that the sum leads to
 * @param method the method
 * @param pump the pump pressure by it; absent where it is not good for this lay
 * @param off the method's less the solved one; absent with it
 * @param note what was taken for the solved flow where the method knows round ones only; empty where nothing was
 * @param refused why it is not good; empty where it is
 */
public record FieldMethods(
        String tip, TradeMethod method, Optional<Pressure> pump, Optional<Pressure> off, String note, String refused) {

    /** Flows that are told apart no finer count as one [gpm]. */
    private static final double SAME_GPM = 0.5;

    /** Every method for the way to every open tip. */
    public static List<FieldMethods> listOf(LayState lay, UnitSystem units) {
        QuantityShown shown = QuantityShown.of(units);
        List<FieldMethods> all = new ArrayList<>();
        for (AtTip tip : lay.open()) {
            for (TradeMethod method : TradeMethod.values()) {
                all.add(of(tip, method, shown));
            }
        }
        return all;
    }

    private static FieldMethods of(AtTip tip, TradeMethod method, QuantityShown shown) {
        List<Station> hoses = tip.stations().stream()
                .filter(station -> station.length().metres() > 0)
                .toList();
        Set<String> notes = new LinkedHashSet<>();
        double hose_Pa = 0;
        for (int i = 0; i < hoses.size(); i++) {
            Run run = tip.path().runs().get(i);
            Optional<LossMethod> rule = method.findRule(run.hose());
            if (rule.isEmpty()) {
                return refused(tip, method, method.without(run.hose(), shown));
            }
            Flow flow = hoses.get(i).flow();
            try {
                Flow taken = rule.get() instanceof HandMethod hand ? hand.nearest(flow) : flow;
                if (Math.abs(taken.gpm() - flow.gpm()) > SAME_GPM) {
                    notes.add(shown.text(flow) + " taken as " + shown.text(taken));
                }
                hose_Pa += rule.get().loss(taken, run.length()).pascals();
            } catch (InvalidInput beyond) {
                return refused(tip, method, sayBeyond(run, flow, beyond, shown));
            }
        }
        return good(tip, method, hose_Pa, notes);
    }

    private static FieldMethods good(AtTip tip, TradeMethod method, double hose_Pa, Set<String> notes) {
        LineState state = tip.state();
        double pump_Pa = state.tip().pascals()
                + hose_Pa
                + state.rise().pascals()
                + state.pipingLoss().pascals()
                + state.applianceLoss().pascals();
        return new FieldMethods(
                tip.outlet().id(),
                method,
                Optional.of(new Pressure(pump_Pa)),
                Optional.of(new Pressure(pump_Pa - state.pump().pascals())),
                notes.isEmpty() ? "" : String.join(", ", notes) + ", the nearest finger or gap",
                "");
    }

    private static FieldMethods refused(AtTip tip, TradeMethod method, String why) {
        return new FieldMethods(tip.outlet().id(), method, Optional.empty(), Optional.empty(), "", why);
    }

    /** The rules are said in gpm: where the company reckons otherwise both stand there. */
    private static String sayBeyond(Run run, Flow flow, InvalidInput beyond, QuantityShown shown) {
        boolean us = shown.units() == UnitSystem.US;
        String value = us ? beyond.value() : shown.text(flow) + " (" + beyond.value() + ")";
        return "A " + beyond.what() + " of " + value + " in " + run.hose().id() + " is beyond it: it is good for "
                + beyond.allowed() + ".";
    }
}
