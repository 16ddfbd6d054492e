package org.hosewright.ledger.walk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.ground.walk.Walk;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.limit.Cautions;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.InWords;

/** A way that was walked, and what a package does at every section's end on it.
 *
 * @param units how results are shown
 * @param walk the way
 * @param named the package, where one was chosen
 * @param sections every section's end, in order
 * @param longestSafe length of hose up to which every mark holds with 95 % confidence, less the company's reserve,
 *     within this way; absent without a package
 * @param stoppedBy the limit at the first mark that does not hold; absent where all of them hold
 * @param cautions what people must keep in mind
 * @param assumed each default that the result rests on
 */
public record WalkReport(
        UnitSystem units,
        Walk walk,
        Optional<HosePackage> named,
        List<SectionThere> sections,
        Optional<Length> longestSafe,
        Optional<Limit> stoppedBy,
        List<String> cautions,
        List<String> assumed) {
    private static final String AS_LAID =
            "The hose is reckoned as the losses were measured: laid straight, no kinks; a straight line on a map is no length of hose.";

    private static final String MAP = "A map is no verified water supply.";

    public WalkReport {
        sections = List.copyOf(sections);
        cautions = List.copyOf(cautions);
        assumed = List.copyOf(assumed);
    }

    /** The way alone. */
    public static WalkReport of(Walk walk, UnitSystem units) {
        return new WalkReport(
                units,
                walk,
                Optional.empty(),
                walk.sections().stream()
                        .map(mark -> new SectionThere(mark, Optional.empty()))
                        .toList(),
                Optional.empty(),
                Optional.empty(),
                cautions(walk),
                walk.assumed());
    }

    /** The way with a package of the kit.
     *
     * @param id of the package
     * @param today the day that ages of tests are taken at; absent where they are not judged
     * @throws InvalidInput a package that the kit does not have
     */
    public static WalkReport of(Walk walk, Kit kit, String id, Optional<LocalDate> today) {
        return of(walk, kit, id, OrderedFigures.NONE, today);
    }

    /** As {@link #of(Walk, Kit, String, Optional)}, with what is ordered for the package. */
    public static WalkReport of(Walk walk, Kit kit, String id, OrderedFigures ordered, Optional<LocalDate> today) {
        HosePackage named = named(kit, id);
        Laying laying = new Laying(walk, kit, named, ordered, today);
        List<SectionThere> sections = walk.sections().stream().map(laying::at).toList();
        Safe safe = Safe.of(sections, kit, walk.section());
        Set<String> assumed = new LinkedHashSet<>(walk.assumed());
        assumed.addAll(laying.duty().assumed());
        Optional<Line> whole =
                laying.findLine(walk.sections().get(walk.sections().size() - 1));
        whole.ifPresent(line -> assumed.addAll(laying.errors().listAssumed(line)));
        if (kit.reserve().isEmpty()) {
            assumed.add("No reserve of hose is set: the longest safe stretch is told whole.");
        }
        Set<String> cautions = new LinkedHashSet<>(cautions(walk));
        whole.flatMap(line -> InWords.unknownPiping(line.discharge())).ifPresent(cautions::add);
        whole.ifPresent(line -> cautions.addAll(
                Cautions.list(line, LineSolver.solve(line, laying.duty().ask()), laying.bounds(), kit.units())));
        return new WalkReport(
                kit.units(),
                walk,
                Optional.of(named),
                sections,
                Optional.of(safe.length()),
                safe.stop(),
                List.copyOf(cautions),
                List.copyOf(assumed));
    }

    private static HosePackage named(Kit kit, String id) {
        return Optional.ofNullable(kit.packages().get(id))
                .orElseThrow(() -> new InvalidInput(
                        "package",
                        id,
                        "one of " + String.join(", ", kit.packages().keySet()),
                        ""));
    }

    private static List<String> cautions(Walk walk) {
        List<String> cautions = new ArrayList<>(walk.remarks());
        cautions.add(AS_LAID);
        cautions.add(MAP);
        return cautions;
    }
}
