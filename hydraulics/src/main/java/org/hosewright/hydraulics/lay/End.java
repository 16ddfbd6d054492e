package org.hosewright.hydraulics.lay;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.limit.Crew;

/** What a chain of hose ends in. */
public sealed interface End {

    /** A nozzle in one setting.
     *
     * @param id its name in the lay
     * @param nozzle the nozzle
     * @param setting its setting; empty for the first one listed
     * @param shut true while no water leaves it
     * @param crew the people at it with their reaction figure, where both are known
     */
    record Outlet(String id, Nozzle nozzle, String setting, boolean shut, Optional<Crew> crew) implements End {
        public Outlet {
            nozzle.tip(setting);
        }

        public Tip tip() {
            return nozzle.tip(setting);
        }

        Outlet turned() {
            return new Outlet(id, nozzle, setting, !shut, crew);
        }
    }

    /** A wye with its legs in order.
     *
     * @param appliance what it loses and bears, where it is named
     * @param legs at least two
     */
    record Wye(Optional<Appliance> appliance, List<Leg> legs) implements End {
        public Wye {
            legs = List.copyOf(legs);
            if (legs.size() < 2) {
                throw new InvalidInput("legs of a wye", String.valueOf(legs.size()), "at least two", "");
            }
        }

        /** The loss at one leg's flow, where it is stated so. */
        Optional<ApplianceLoss> perLeg() {
            return lossPer(Appliance.Per.LEG);
        }

        /** The loss at the sum of the flows, where it is stated so. */
        Optional<ApplianceLoss> perTotal() {
            return lossPer(Appliance.Per.TOTAL);
        }

        private Optional<ApplianceLoss> lossPer(Appliance.Per per) {
            return appliance.filter(named -> named.per() == per).map(Appliance::loss);
        }
    }
}
