package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.LayState.Station;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Pressure;

/** A lay's pump pressure by one of the trade's methods, beside the solved one.
 *
 * <p>The flows are the solved ones; the method takes the hose. Tip, rise, piping and fittings count as they are solved.
 *
 * @param tip the tip that the sum leads to
 * @param method the method
 * @param pump the pump pressure by it; absent where it is not good for this lay
 * @param off the method's less the solved one; absent with it
 * @param refused why it is not good; empty where it is
 */
public record FieldMethods(
        String tip, TradeMethod method, Optional<Pressure> pump, Optional<Pressure> off, String refused) {

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
                    "");
        } catch (InvalidInput refused) {
            return new FieldMethods(
                    tip.outlet().id(),
                    method,
                    Optional.empty(),
                    Optional.empty(),
                    String.valueOf(refused.getMessage()));
        }
    }

    private static double hose_Pa(AtTip tip, TradeMethod method) {
        List<Station> hoses = tip.stations().stream()
                .filter(station -> station.length().metres() > 0)
                .toList();
        double sum = 0;
        for (int i = 0; i < hoses.size(); i++) {
            Run run = tip.path().runs().get(i);
            double loss_Pa = method.rule(run.hose())
                    .loss(hoses.get(i).flow(), run.length())
                    .pascals();
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
