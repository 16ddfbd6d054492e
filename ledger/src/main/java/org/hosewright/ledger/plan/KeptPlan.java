package org.hosewright.ledger.plan;

import java.time.LocalDate;
import java.util.Optional;

/** A plan that the company keeps: what was asked, and of which kit. The same question of the same kit gives the same list.
 *
 * @param name what people call it
 * @param kitVersion the version of the kit that it was planned with
 * @param asked what was asked
 * @param signed who answers for the night; absent until somebody does
 */
public record KeptPlan(String name, long kitVersion, PlanAsked asked, Optional<Signed> signed) {
    /** The signature of the night's lead.
     *
     * @param who who signed
     * @param on the day
     */
    public record Signed(String who, LocalDate on) {}

    /** The same, signed. */
    public KeptPlan signedBy(String who, LocalDate on) {
        return new KeptPlan(name, kitVersion, asked, Optional.of(new Signed(who, on)));
    }
}
