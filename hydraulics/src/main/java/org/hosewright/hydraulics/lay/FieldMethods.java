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
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

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
    public static List<FieldMethods> listOf(LayState lay) {
        List<FieldMethods> all = new ArrayList<>();
        for (AtTip tip : lay.open()) {
            for (TradeMethod method : TradeMethod.values()) {
                all.add(of(tip, method));
            }
        }
        return all;
    }

    private static FieldMethods of(AtTip tip, TradeMethod method) {
        try {
            LineState state = tip.state();
            double pump_Pa = state.tip().pascals()
                    + hose_Pa(tip, method)
                    + state.rise().pascals()
                    + state.pipingLoss().pascals()
                    + state.applianceLoss().pascals();
            double off_Pa = pump_Pa - state.pump().pascals();
            return new FieldMethods(
                    tip.outlet().id(),
                    method,
                    Optional.of(new Pressure(pump_Pa)),
                    Optional.of(new Pressure(off_Pa)),
                    note(tip, method),
                    "");
        } catch (InvalidInput refused) {
            return new FieldMethods(
                    tip.outlet().id(),
                    method,
                    Optional.empty(),
                    Optional.empty(),
                    "",
                    String.valueOf(refused.getMessage()));
        }
    }

    /** The hand has fingers and gaps only: the nearest is taken, and said. */
    private static String note(AtTip tip, TradeMethod method) {
        Set<String> says = new LinkedHashSet<>();
        List<Station> hoses = hoses(tip);
        for (int i = 0; i < hoses.size(); i++) {
            if (method.rule(tip.path().runs().get(i).hose()) instanceof HandMethod hand) {
                Flow real = hoses.get(i).flow();
                Flow taken = hand.nearest(real);
                if (Math.abs(taken.gpm() - real.gpm()) > SAME_GPM) {
                    says.add(gpm(real) + " taken as " + gpm(taken));
                }
            }
        }
        return says.isEmpty() ? "" : String.join(", ", says) + ", the nearest finger or gap";
    }

    private static String gpm(Flow flow) {
        return Numbers.plain(Numbers.toNearest(flow.gpm(), 1)) + " gpm";
    }

    private static List<Station> hoses(AtTip tip) {
        return tip.stations().stream()
                .filter(station -> station.length().metres() > 0)
                .toList();
    }

    private static double hose_Pa(AtTip tip, TradeMethod method) {
        List<Station> hoses = hoses(tip);
        double sum = 0;
        for (int i = 0; i < hoses.size(); i++) {
            Run run = tip.path().runs().get(i);
            LossMethod rule = method.rule(run.hose());
            Flow flow = rule instanceof HandMethod hand
                    ? hand.nearest(hoses.get(i).flow())
                    : hoses.get(i).flow();
            double loss_Pa = rule.loss(flow, run.length()).pascals();
            if (loss_Pa < 0) {
                throw new InvalidInput(
                        "loss of " + run.hose().id() + " by the " + method.word() + " way",
                        "less than nothing",
                        "a flow within its range",
                        "");
            }
            sum += loss_Pa;
        }
        return sum;
    }
}
