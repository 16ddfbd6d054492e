package org.hosewright.ledger.lay;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.lay.LayCautions;
import org.hosewright.hydraulics.lay.LayLimits;
import org.hosewright.hydraulics.lay.LaySolver;
import org.hosewright.hydraulics.lay.LayState;
import org.hosewright.hydraulics.lay.SecondLine;
import org.hosewright.hydraulics.lay.Trail;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.TestAge;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.supply.SupplyLine;
import org.hosewright.hydraulics.working.Working;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitBounds;
import org.hosewright.ledger.line.KitLines;

/** A lay of several lines or tips, solved: what its result file and its text show.
 *
 * @param kit the kit
 * @param laid the lay and what was asked
 * @param state pump, tips and gates
 * @param secondLines what each tip of a wye gets when one opens or shuts with the pump untouched
 * @param secondSays the same as sentences; they stand before the numbers
 * @param intake pressure that the supply leaves at the pump, where the supply is stated
 * @param limits every limit, the most used first
 * @param workings the way from the pump to each open tip
 * @param cautions what people must keep in mind, {@code secondSays} not among them
 * @param assumed each default that the result rests on
 */
public record BranchedReport(
        Kit kit,
        BranchedLay laid,
        LayState state,
        List<SecondLine> secondLines,
        List<String> secondSays,
        Optional<Pressure> intake,
        List<Limit> limits,
        List<Working> workings,
        List<String> cautions,
        List<String> assumed) {
    public BranchedReport {
        secondLines = List.copyOf(secondLines);
        secondSays = List.copyOf(secondSays);
        limits = List.copyOf(limits);
        workings = List.copyOf(workings);
        cautions = List.copyOf(cautions);
        assumed = List.copyOf(assumed);
    }

    /** The lay solved.
     *
     * @param today the day that ages of tests are taken at; absent where they are not judged
     */
    public static BranchedReport of(Kit kit, BranchedLay laid, Optional<LocalDate> today) {
        LayState state = LaySolver.solve(laid.lay(), laid.ask());
        Optional<SupplyLine> supply = laid.supply().map(one -> one.line(kit));
        Bounds bounds = bounds(kit, laid, state, today).withSupply(supply.map(SupplyLine::most));
        List<SecondLine> second = SecondLine.listOf(laid.lay(), state);
        List<String> cautions = new ArrayList<>(laid.leftOut());
        laid.supply().ifPresent(one -> cautions.addAll(one.cautions()));
        cautions.addAll(LayCautions.list(state, laid.ask(), bounds, kit.units()));
        return new BranchedReport(
                kit,
                laid,
                state,
                second,
                new SecondLineWords(kit, bounds).says(second),
                supply.map(feeding -> feeding.intakeAt(state.flow())),
                LayLimits.of(state, bounds),
                Trail.listOf(state, kit.units()),
                cautions,
                assumed(kit, laid, state));
    }

    private static Bounds bounds(Kit kit, BranchedLay laid, LayState state, Optional<LocalDate> today) {
        Map<String, TestAge> ages = new LinkedHashMap<>();
        for (LayState.AtTip tip : state.tips()) {
            for (Run run : tip.path().runs()) {
                String hose = run.hose().id();
                ages.put(hose, KitBounds.age(KitLines.get(kit.hoses(), hose, "hose"), today));
            }
        }
        return Bounds.of(KitLines.get(kit.engines(), laid.engine(), "engine of the lay")
                        .engine())
                .withHoseTests(ages);
    }

    private static List<String> assumed(Kit kit, BranchedLay laid, LayState state) {
        List<String> assumed = new ArrayList<>(laid.assumed());
        laid.supply().ifPresent(one -> assumed.addAll(one.assumed(kit)));
        boolean stated = state.tips().stream()
                .flatMap(tip -> tip.path().runs().stream())
                .anyMatch(run -> run.hose().loss().standardError().isPresent());
        if (stated) {
            assumed.add("The errors of the losses are not carried through a lay of several tips:"
                    + " its figures bear none.");
        }
        return assumed;
    }
}
