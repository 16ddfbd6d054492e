package org.hosewright.hydraulics.demand;

import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Volume;

/** The least water for a building without mains: volume by hazard times construction.
 *
 * @param hazard occupancy hazard classification number, 3 (severe) to 7 (light, dwellings)
 * @param construction construction classification number, 0.5 to 1.5
 * @param exposed true where another building stands within 50 ft
 * @source NFPA 1142 (from memory): volume / hazard * construction, half more where exposed, at least 2000 or 3000 gal
 */
public record RuralSupply(int hazard, double construction, boolean exposed) {
    public RuralSupply {
        Numbers.requireWithin("occupancy hazard number", hazard, 3, 7, "");
        Numbers.requireWithin("construction number", construction, 0.5, 1.5, "");
    }

    /** Water for a volume of building.
     *
     * @param building all storeys and half the height of the roof
     */
    public Volume least(Volume building) {
        double cubicFeet = building.cubicMetres() / (Constants.FOOT_M * Constants.FOOT_M * Constants.FOOT_M);
        double gallons = cubicFeet / hazard * construction * (exposed ? 1.5 : 1);
        return Volume.ofGallons(Math.max(gallons, exposed ? 3000 : 2000));
    }
}
