package org.hosewright.hydraulics.equipment;

import java.util.Optional;
import org.hosewright.hydraulics.quantity.Pressure;

/** A wye, siamese, monitor or other fitting between hoses.
 *
 * @param id the company's name for it
 * @param loss what it takes
 * @param per whether the loss is at one leg's flow or at the sum
 * @param rated the highest pressure its maker allows
 */
public record Appliance(String id, ApplianceLoss loss, Per per, Optional<Pressure> rated) {
    /** The flow that an appliance's loss is taken at. */
    public enum Per {
        LEG,
        TOTAL
    }
}
