package org.hosewright.hydraulics.method;

import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Volume;

/** Water in wildland hose by whole gallons per 100 ft.
 *
 * @source NWCG, Firefighter Math: 1 in 4 gal, 1 1/2 in 9 gal
 * @validFor whole counts of 100 ft lengths
 */
public enum WildlandVolume {
    ONE_INCH(4),
    ONE_AND_HALF_INCH(9);

    private final double gallons;

    WildlandVolume(double gallons) {
        this.gallons = gallons;
    }

    /** What so many lengths of 100 ft hold. */
    public Volume in(int lengths) {
        return Volume.ofGallons(gallons * Numbers.requireNotNegative("lengths of hose", lengths));
    }
}
