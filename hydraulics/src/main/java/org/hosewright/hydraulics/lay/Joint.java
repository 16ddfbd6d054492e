package org.hosewright.hydraulics.lay;

import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;

/** Where lines meet, and what follows; each line into it has a clapper, so that no water flows back.
 *
 * @param appliance the siamese, where it is named: its loss is taken at each line's flow or at the sum, as it is stated
 * @param leg what follows
 */
public record Joint(Optional<Appliance> appliance, Leg leg) {}
