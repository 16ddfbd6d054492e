package org.hosewright.ledger.reach;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Cautions;
import org.hosewright.hydraulics.line.Duty;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.reach.Reach;
import org.hosewright.hydraulics.reach.ReachResult;
import org.hosewright.hydraulics.working.ReachWorking;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitBounds;
import org.hosewright.ledger.line.KitErrors;
import org.hosewright.ledger.line.KitLines;

/** How far every package of a kit can go. */
public final class ReachAnalysis {
    /** Farther up or down than any line is taken; more is a slip of the pen. */
    private static final double MOST_RISE_M = 300;

    private ReachAnalysis() {}

    /** What is asked.
     *
     * @param rise tip above the pump, negative downhill
     * @param ceiling pump pressure asked about; absent for each engine's own
     * @param today the day that ages of tests are taken at; absent where they are not judged
     */
    public record Question(Length rise, Optional<Pressure> ceiling, Optional<LocalDate> today) {}

    /** The report of a kit.
     *
     * <p>A package that nothing limits has no reach; it is named among what is assumed.
     *
     * @throws InvalidInput the rise is more than 300 m up or down, or the ceiling is not above 0
     */
    public static ReachReport of(Kit kit, Question question) {
        checkRise(kit, question.rise());
        question.ceiling().ifPresent(ceiling -> {
            if (ceiling.pascals() <= 0) {
                String given = QuantityShown.of(kit.units()).text(ceiling);
                throw new InvalidInput("ceiling", given, "a pressure above 0", "");
            }
        });
        List<PackageReach> packages = new ArrayList<>();
        Set<String> assumed = new LinkedHashSet<>();
        for (HosePackage named : kit.packages().values()) {
            try {
                PackageReach reach = one(kit, named, question);
                packages.add(reach);
                assumed.addAll(reach.result().assumed());
            } catch (InvalidInput nothingStopsIt) {
                assumed.add("No reach is told for " + named.id() + ". " + nothingStopsIt.getMessage());
            }
        }
        return new ReachReport(kit, question.rise(), question.ceiling(), packages, List.copyOf(assumed));
    }

    private static void checkRise(Kit kit, Length rise) {
        if (Math.abs(rise.metres()) > MOST_RISE_M) {
            QuantityShown shown = QuantityShown.of(kit.units());
            String most = shown.text(new Length(MOST_RISE_M));
            throw new InvalidInput("rise", shown.text(rise), "no more than " + most + " up or down", "");
        }
    }

    private static PackageReach one(Kit kit, HosePackage named, Question question) {
        Bounds set = KitBounds.of(kit, named, question.today());
        Bounds bounds = question.ceiling().map(set::withCeiling).orElse(set);
        Line line = KitLines.of(kit, named, new Length(0)).withRise(question.rise());
        ReachResult result = Reach.longest(line, KitErrors.of(kit), bounds);
        return new PackageReach(
                named,
                result,
                List.of(ReachWorking.of(line, bounds, result, kit.units())),
                cautions(kit, line, result, bounds));
    }

    private static List<String> cautions(Kit kit, Line line, ReachResult result, Bounds bounds) {
        double lastAlone_m = result.longestSafe().metres()
                - line.length().metres()
                + line.last().length().metres();
        if (lastAlone_m <= 0) {
            return List.of("Not one section of this package is safe at that rise and ceiling.");
        }
        Line longest = line.withLastLength(new Length(lastAlone_m));
        Duty duty = Duty.of(longest, bounds.target());
        return Cautions.list(longest, LineSolver.solve(longest, duty.ask()), bounds, kit.units());
    }
}
