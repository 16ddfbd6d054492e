package org.hosewright.hydraulics.network.law;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Numbers;

/** What a pump at a fixed speed adds: gain = shut - a Q^b; backward flow meets the shut-off gain.
 *
 * @param shut_Pa gain with no flow [Pa]; above 0
 * @param a what a cubic metre a second takes off it [Pa (s/m3)^b]; above 0
 * @param b the power, from 1 to 4
 */
public record PumpGain(double shut_Pa, double a, double b) implements Law {
    public PumpGain {
        Numbers.requirePositive("shut-off gain of a pump", shut_Pa);
        Numbers.requirePositive("fall of a pump's gain", a);
        if (!(b >= 1 && b <= 4)) {
            throw new InvalidInput("exponent of a pump's gain", Numbers.plain(b), "1 to 4", "");
        }
    }

    @Override
    public double loss_Pa(double flow_m3s) {
        return flow_m3s <= 0 ? -shut_Pa : a * Math.pow(flow_m3s, b) - shut_Pa;
    }

    @Override
    public double slope(double flow_m3s) {
        return flow_m3s <= 0 ? 0 : a * b * Math.pow(flow_m3s, b - 1);
    }

    @Override
    public double flow_m3s(double drop_Pa) {
        return Math.pow(Math.max(0, drop_Pa + shut_Pa) / a, 1 / b);
    }
}
