package org.hosewright.ledger.reach;

import java.util.List;
import org.hosewright.hydraulics.reach.ReachResult;
import org.hosewright.hydraulics.working.Working;
import org.hosewright.ledger.kit.HosePackage;

/** How far one package can go and what stops it.
 *
 * @param hosePackage the package
 * @param result longest, longest safe, and what stops it
 * @param workings hand calculation of the longest stretch
 * @param cautions what the driver must keep in mind
 */
public record PackageReach(HosePackage hosePackage, ReachResult result, List<Working> workings, List<String> cautions) {
    public PackageReach {
        workings = List.copyOf(workings);
        cautions = List.copyOf(cautions);
    }
}
