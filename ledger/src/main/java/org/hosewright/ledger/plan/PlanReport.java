package org.hosewright.ledger.plan;

import java.util.List;
import org.hosewright.evidence.plan.Plan;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;

/** A test night planned, with what people need to hold it.
 *
 * @param kit the kit
 * @param asked what was asked
 * @param hosePackage the package to fly
 * @param plan its readings, what they should tell, and what they take
 * @param roles who does what
 * @param goNoGo what must be so before water flows
 * @param cautions what keeps people from harm
 * @param assumed each default that it rests on
 */
public record PlanReport(
        Kit kit,
        PlanAsked asked,
        HosePackage hosePackage,
        Plan plan,
        List<String> roles,
        List<String> goNoGo,
        List<String> cautions,
        List<String> assumed) {
    public PlanReport {
        roles = List.copyOf(roles);
        goNoGo = List.copyOf(goNoGo);
        cautions = List.copyOf(cautions);
        assumed = List.copyOf(assumed);
    }
}
