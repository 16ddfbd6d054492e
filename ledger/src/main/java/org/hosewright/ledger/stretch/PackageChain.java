package org.hosewright.ledger.stretch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;

/** Packages laid one after the other as one line: a line that is always connected, lengthened by another's hose.
 *
 * <p>It runs from the first one's discharge through all hose in laying order to the last one's nozzle.
 */
public final class PackageChain {
    private PackageChain() {}

    /** The chain as one package; a single one is itself.
     *
     * @param ids in laying order; not empty
     * @throws InvalidInput a package that the kit does not have, or one twice
     */
    public static HosePackage of(Kit kit, List<String> ids) {
        if (ids.isEmpty() || ids.stream().distinct().count() < ids.size()) {
            throw new InvalidInput("packages", String.join(", ", ids), "one or more packages, each once", "");
        }
        List<HosePackage> parts = ids.stream()
                .map(id -> KitLines.get(kit.packages(), id, "package"))
                .toList();
        HosePackage first = parts.get(0);
        HosePackage last = parts.get(parts.size() - 1);
        if (parts.size() == 1) {
            return first;
        }
        List<Stretch> hose = new ArrayList<>();
        parts.forEach(part -> hose.addAll(part.hose()));
        return new HosePackage(
                String.join(" + ", ids),
                first.engine(),
                first.discharge(),
                hose,
                last.nozzle(),
                last.setting(),
                last.crew(),
                last.target(),
                last.least(),
                Optional.empty());
    }
}
