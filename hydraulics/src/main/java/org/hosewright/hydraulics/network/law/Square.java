package org.hosewright.hydraulics.network.law;

import org.hosewright.hydraulics.quantity.Numbers;

/** A loss that grows with the square of the flow: hose, piping, a fitting, a fixed tip. loss = r Q|Q|.
 *
 * @param r the loss at one cubic metre a second [Pa s2/m6]; above 0
 */
public record Square(double r) implements Law {
    public Square {
        Numbers.requirePositive("resistance", r);
    }

    @Override
    public double loss_Pa(double flow_m3s) {
        return r * flow_m3s * Math.abs(flow_m3s);
    }

    @Override
    public double slope(double flow_m3s) {
        return 2 * r * Math.abs(flow_m3s);
    }

    @Override
    public double flow_m3s(double drop_Pa) {
        return Math.signum(drop_Pa) * Math.sqrt(Math.abs(drop_Pa) / r);
    }
}
