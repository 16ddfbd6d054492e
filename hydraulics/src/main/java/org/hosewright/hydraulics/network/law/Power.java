package org.hosewright.hydraulics.network.law;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Numbers;

/** A loss that grows with a power of the flow, beside a part that grows with its square.
 *
 * <p>loss = r |Q|^n sign(Q) + m Q|Q|: a main by Hazen-Williams with its fittings, a hydrant below its static.
 *
 * @param r the loss of the power part at one cubic metre a second [Pa (s/m3)^n]; above 0
 * @param n the power, from 1 to 3
 * @param m the loss of the square part at one cubic metre a second [Pa s2/m6]; 0 or more
 */
public record Power(double r, double n, double m) implements Law {
    /** Exponent of the Hazen-Williams form. */
    public static final double HAZEN_WILLIAMS = 1.852;

    /** How close the inverse comes, as a share of the flow [1]; it is only a place to linearise at. */
    private static final double INVERSE = 1e-6;

    private static final int INVERSE_STEPS = 40;

    public Power {
        Numbers.requirePositive("resistance", r);
        Numbers.requireNotNegative("square part of a loss", m);
        if (!(n >= 1 && n <= 3)) {
            throw new InvalidInput("exponent of a loss", Numbers.plain(n), "1 to 3", "");
        }
    }

    public Power(double r, double n) {
        this(r, n, 0);
    }

    @Override
    public double loss_Pa(double flow_m3s) {
        double size = Math.abs(flow_m3s);
        return Math.signum(flow_m3s) * (r * Math.pow(size, n) + m * size * size);
    }

    @Override
    public double slope(double flow_m3s) {
        double size = Math.abs(flow_m3s);
        return n * r * Math.pow(size, n - 1) + 2 * m * size;
    }

    @Override
    public double flow_m3s(double drop_Pa) {
        double drop = Math.abs(drop_Pa);
        double flow = Math.pow(drop / r, 1 / n);
        for (int step = 0; m > 0 && flow > 0 && step < INVERSE_STEPS; step++) {
            double change = (loss_Pa(flow) - drop) / slope(flow);
            flow = Math.max(flow - change, flow / 2);
            if (Math.abs(change) < INVERSE * flow) {
                break;
            }
        }
        return Math.signum(drop_Pa) * flow;
    }
}
