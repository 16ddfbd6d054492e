package org.hosewright.ledger.plan;

/** A plan that the company keeps: what was asked, and of which kit. The same question of the same kit gives the same list.
 *
 * @param name what people call it
 * @param kitVersion the version of the kit that it was planned with
 * @param asked what was asked
 */
public record KeptPlan(String name, long kitVersion, PlanAsked asked) {}
