package org.hosewright.server.setup;

import org.hosewright.ledger.drill.Drills;
import org.hosewright.ledger.exchange.CompanyKey;
import org.hosewright.ledger.history.History;
import org.hosewright.ledger.kit.Kits;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.order.Orders;
import org.hosewright.ledger.person.People;

/** The company's record, as the server reaches it.
 *
 * @param kits the kit through time
 * @param drills the test nights
 * @param orders the ordered pressures
 * @param leaves walks, plans, beds and whatever else is kept whole
 * @param people who has an account
 * @param history who did what
 * @param key the company's own key, for what it hands to neighbours
 */
public record Ports(
        Kits kits, Drills drills, Orders orders, Leaves leaves, People people, History history, CompanyKey key) {}
