package org.hosewright.ledger.plan;

import java.time.LocalDate;
import java.util.Optional;

/** A plan that the company keeps: what was asked, of which kit, and what was answered then.
 *
 * <p>The same question of the same kit gives the same list, until the program itself plans otherwise; the answer kept shows that.
 *
 * @param name what people call it
 * @param kitVersion the version of the kit that it was planned with
 * @param asked what was asked
 * @param worked the answer when it was kept, as a result file has it; empty where a plan was kept without
 * @param signed who answers for the night; absent until somebody does
 */
public record KeptPlan(String name, long kitVersion, PlanAsked asked, String worked, Optional<Signed> signed) {
    /** The signature of the night's lead.
     *
     * @param who who signed
     * @param on the day
     */
    public record Signed(String who, LocalDate on) {}

    /** The same, signed. */
    public KeptPlan signedBy(String who, LocalDate on) {
        return new KeptPlan(name, kitVersion, asked, worked, Optional.of(new Signed(who, on)));
    }

    /** True where the program answers now as it did when the plan was kept, as far as that can be told. */
    public boolean isAnsweredAlike(String now) {
        return worked.isEmpty() || worked.equals(now);
    }
}
