package org.hosewright.evidence.joint;

import java.util.List;
import org.hosewright.evidence.night.Reading;
import org.hosewright.evidence.night.Shown;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;

/** A reading's own guess of its latent values, for the fit to begin from.
 *
 * @param rack the gear
 * @param reading the reading
 */
record Beginning(Rack rack, Reading reading) {
    /** A pressure never guessed lower than this share of the pump's. */
    private static final double LEAST_SHARE = 0.02;

    List<Double> latents(Water water) {
        double tip_Pa = tip_Pa(water);
        return water.kind() == Water.Kind.FREE
                ? List.of(Math.log(tip_Pa), Math.log(freeFlow_m3s(tip_Pa)))
                : List.of(Math.log(tip_Pa));
    }

    private double tip_Pa(Water water) {
        Shown shown = reading.shown();
        if (shown.tip().isPresent()) {
            Tip tip = rack.tip(reading);
            double share = TapView.of(reading, rack.tipGauge(reading), tip).share();
            return shown.tip().get().pascals() / share;
        }
        double flow_m3s = flow_m3s();
        if (water.kind() == Water.Kind.ORIFICE) {
            double root = flow_m3s
                    / (water.rate() * TipPrior.of(rack.tip(reading), false).centre());
            return root * root;
        }
        return atLeast(leftAtTip_Pa() - resistance() * flow_m3s * flow_m3s);
    }

    private double freeFlow_m3s(double tip_Pa) {
        double flow_m3s = flow_m3s();
        return flow_m3s > 0 ? flow_m3s : Math.sqrt(atLeast(leftAtTip_Pa() - tip_Pa) / resistance());
    }

    private double flow_m3s() {
        return reading.shown().flow().map(Flow::cubicMetresPerSecond).orElse(0.0);
    }

    private double leftAtTip_Pa() {
        double rise_m = reading.laid().rise().map(Length::metres).orElse(0.0);
        return reading.shown().pump().pascals() - Constants.WATER_PA_PER_M * rise_m;
    }

    private double atLeast(double pressure_Pa) {
        double least_Pa =
                Math.max(Constants.PSI_PA, LEAST_SHARE * reading.shown().pump().pascals());
        return Math.max(least_Pa, pressure_Pa);
    }

    private double resistance() {
        double sum = 0;
        for (Stretch part : reading.laid().hose()) {
            sum += rack.hose(part.hose()).loss().value().r() * part.length().metres();
        }
        return sum;
    }
}
