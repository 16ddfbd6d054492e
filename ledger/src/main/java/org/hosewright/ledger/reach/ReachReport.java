package org.hosewright.ledger.reach;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.kit.Kit;

/** How far every package can go.
 *
 * @param kit the kit
 * @param rise tip above the pump
 * @param ceiling pump pressure asked about, where other than each engine's own
 * @param packages in the kit's order
 * @param assumed each default that a result rests on
 */
public record ReachReport(
        Kit kit, Length rise, Optional<Pressure> ceiling, List<PackageReach> packages, List<String> assumed) {
    public ReachReport {
        packages = List.copyOf(packages);
        assumed = List.copyOf(assumed);
    }
}
