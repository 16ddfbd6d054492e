package org.hosewright.ledger.bed;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.error.InvalidInput;

/** What lies on one rig, as its crew saw it at the last check, and whether a reserve rig serves in its place.
 *
 * @param engine id of the engine
 * @param reserve id of the engine that is in service in its place, where one is
 * @param lines each package's place once; a package that nobody looked at is not in it
 */
public record RigBed(String engine, Optional<String> reserve, List<Lying> lines) {
    public RigBed {
        lines = List.copyOf(lines);
        Set<String> seen = new HashSet<>();
        for (Lying line : lines) {
            if (!seen.add(line.hosePackage())) {
                throw new InvalidInput("package", line.hosePackage(), "each package once", "");
            }
        }
        if (reserve.filter(engine::equals).isPresent()) {
            throw new InvalidInput("reserve rig", engine, "another engine than the one that it stands in for", "");
        }
    }

    /** What lies in a package's place, where somebody looked. */
    public Optional<Lying> find(String hosePackage) {
        return lines.stream()
                .filter(line -> line.hosePackage().equals(hosePackage))
                .findFirst();
    }
}
