package org.hosewright.hydraulics.equipment;

import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** A smooth bore tip: Q = 29.7 d^2 sqrt(p), reaction 1.57 d^2 p.
 *
 * @param bore inside diameter at the outlet; above 0
 * @param at the pressure it is meant to work at; above 0
 * @source City of Rohnert Park, driver/operator deck 3-8; a nozzle maker's flow table, 2015
 * @accuracy within 1 gpm of the maker's table from 7/8 to 1 3/8 in and 40 to 80 psi
 */
public record SmoothBore(Length bore, Pressure at) implements KFactorTip {
    public SmoothBore {
        Numbers.requirePositive("bore", bore.metres());
        Numbers.requirePositive("working pressure of a tip", at.pascals());
    }

    @Override
    public double k() {
        return Constants.SMOOTH_BORE * bore.metres() * bore.metres();
    }

    @Override
    public Tip flowing(double factor) {
        return new SmoothBore(new Length(bore.metres() * Math.sqrt(factor)), at);
    }

    @Override
    public double reaction_N(double pressure_Pa, double flow_m3s) {
        return Constants.SOLID_REACTION * bore.metres() * bore.metres() * Math.max(0, pressure_Pa);
    }
}
