package org.hosewright.ledger.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.plan.Means;
import org.hosewright.evidence.plan.Plan;
import org.hosewright.evidence.plan.Planning;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Cautions;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitBounds;
import org.hosewright.ledger.line.KitErrors;
import org.hosewright.ledger.line.KitLines;
import org.hosewright.ledger.line.NightEngines;
import org.hosewright.ledger.line.NightGear;

/** Planning a test night with what the company has. */
public final class PlanAnalysis {
    private final Kit kit;
    private final PlanAsked asked;
    private final HosePackage named;
    private final Bounds bounds;

    private PlanAnalysis(Kit kit, PlanAsked asked) {
        this.kit = kit;
        this.asked = asked;
        this.named = KitLines.get(kit.packages(), asked.hosePackage(), "package");
        this.bounds = KitBounds.of(kit, named, Optional.of(asked.date())).withSupply(asked.supply());
    }

    /** The plan of a night.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput hose that must not be flown, no reading within every limit, no
     *     instruments for it, or no such package
     */
    public static PlanReport of(Kit kit, PlanAsked asked) {
        return new PlanAnalysis(kit, asked).report();
    }

    private PlanReport report() {
        Plan plan = Planning.of(means(), asked.budget(), asked.questions(), asked.optimality());
        return new PlanReport(kit, asked, named, plan, NightWords.ROLES, NightWords.GO, cautions(plan), assumed(plan));
    }

    private Means means() {
        Line line = KitLines.of(kit, named, new Length(0));
        Instruments instruments = Instruments.of(kit, asked.instruments());
        return new Means(
                line,
                onHand(line),
                asked.rise(),
                NightGear.of(
                        kit, Optional.of(asked.date()), new NightEngines(Map.of(named.discharge(), named.engine()))),
                instruments.listAtPump(KitLines.get(kit.engines(), named.engine(), "engine")),
                instruments.findAtTip(),
                instruments.findMeter(),
                bounds,
                KitErrors.of(kit),
                kit.units());
    }

    private Length onHand(Line line) {
        return asked.onHand().orElse(new Length(2 * line.last().length().metres()));
    }

    private List<String> cautions(Plan plan) {
        List<String> cautions = new ArrayList<>(NightWords.CAUTIONS);
        plan.points().stream()
                .filter(point -> !point.shut())
                .flatMap(point -> Cautions.list(point.line(), point.state(), bounds, kit.units()).stream())
                .distinct()
                .forEach(cautions::add);
        if (bounds.crew().isEmpty()) {
            cautions.add("No crew figure is set for this package: reaction is not checked.");
        }
        return cautions;
    }

    private List<String> assumed(Plan plan) {
        List<String> assumed = new ArrayList<>();
        if (asked.onHand().isEmpty()) {
            assumed.add("Hose on hand not stated: "
                    + QuantityShown.of(kit.units()).text(plan.means().onHand()) + " of "
                    + plan.means().line().last().hose().id() + ", twice what the package carries.");
        }
        if (asked.supply().isEmpty()) {
            assumed.add("The flow that hydrant or tank gives is not stated: it is not checked.");
        }
        assumed.addAll(plan.assumed());
        return assumed;
    }
}
