package org.hosewright.ledger.stretch;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hosewright.ground.stretch.StretchEstimate;
import org.hosewright.ground.stretch.StretchFactor;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.walk.LineThere;

/** An estimated stretch laid with a package: what the pump must do for the fewest sections, the planned and the most.
 *
 * @param estimate the hose
 * @param named the package, as much of its last hose as the stretch takes
 * @param rise the tip above the pump, negative downhill
 * @param lines by rising count of sections, each count once; counts that its earlier hoses already pass are left out
 * @param longestSafe hose up to which the package is safe on that rise, less the company's reserve
 * @param stoppedBy what stops it beyond
 * @param second the pump with a second line beside it, where one is planned from another discharge
 * @param cautions what people must keep in mind
 * @param assumed each default that the result rests on
 */
public record StretchReport(
        StretchEstimate estimate,
        HosePackage named,
        Length rise,
        List<Laid> lines,
        Length longestSafe,
        String stoppedBy,
        Optional<SecondLine> second,
        List<String> cautions,
        List<String> assumed) {
    private static final String NO_MAP =
            "Map data is not a verified water supply, and a straight line on a map is no length of hose.";
    private static final String AS_LAID =
            "Reckoned as the losses were measured: laid straight, no kinks. A kink or a part-shut gate takes more.";
    private static final String ONE_DISCHARGE = "Both lines hang on one discharge: work the second line out as a lay.";

    public StretchReport {
        lines = List.copyOf(lines);
        cautions = List.copyOf(cautions);
        assumed = List.copyOf(assumed);
    }

    /** The line with a count of sections.
     *
     * @param sections of hose, the reserve among them: it hangs on the line too
     * @param line what it needs and the limit that it uses most
     */
    public record Laid(int sections, LineThere line) {}

    /** What a kept stretch comes to.
     *
     * @param factor hose used over hose planned, as the company has learnt it; absent where it has no stretch yet
     * @param today the day that ages of tests are taken at; absent where they are not judged
     */
    public static StretchReport of(
            KeptStretch kept, Kit kit, Optional<StretchFactor> factor, Optional<LocalDate> today) {
        return new StretchReckoning(kept, kit, today).report(StretchEstimate.of(kept.plan(kit), factor));
    }

    /** The line with the planned count of sections; absent where the package's earlier hoses already reach further. */
    public Optional<Laid> planned() {
        return lines.stream()
                .filter(laid -> laid.sections() == estimate.sections())
                .findFirst();
    }

    /** True where hose for the planned count of sections is within what is safe. */
    public boolean isWithinReach() {
        return estimate.hose().metres() <= longestSafe.metres() * (1 + 1e-9);
    }

    static List<String> cautions(boolean oneDischarge) {
        return oneDischarge ? List.of(AS_LAID, NO_MAP, ONE_DISCHARGE) : List.of(AS_LAID, NO_MAP);
    }
}
