package org.hosewright.hydraulics.network.law;

import org.hosewright.hydraulics.quantity.Numbers;

/** What of water its friction hangs on.
 *
 * @param density_kgm3 density [kg/m3]; above 0
 * @param viscosity_m2s kinematic viscosity [m2/s]; above 0
 */
public record Water(double density_kgm3, double viscosity_m2s) {
    /** Water at 20 °C. @source handbook values, 998.2 kg/m3 and 1.004e-6 m2/s (from memory) */
    public static final Water AT_20_C = new Water(998.2, 1.004e-6);

    public Water {
        Numbers.requirePositive("density of water", density_kgm3);
        Numbers.requirePositive("viscosity of water", viscosity_m2s);
    }
}
