package org.hosewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Entry;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.history.Subject;
import org.hosewright.ledger.order.OrderBook;
import org.hosewright.ledger.order.OrderBook.Standing;
import org.hosewright.ledger.order.OrderRevision;
import org.hosewright.ledger.order.OrderStep;
import org.hosewright.ledger.order.OrderStep.Kind;
import org.hosewright.ledger.order.Orders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every store owes ordered pressures: numbers once, steps in order, nothing edited. */
abstract class OrderContract extends StoreCase {
    private static final Act CHIEF = new Act("Chief", "after the May test");
    private static final Act DRIVER = new Act("A. Fenn", "");

    private Orders orders;

    @BeforeEach
    void saveKit() {
        orders = store.orders();
        saved(store.kits().save("kit one", 0, TYPING));
    }

    @Test
    void proposedSignedFittedAcknowledgedHolds() {
        OrderRevision first = orders.propose("3f2a90c1", 1, "{}", TYPING);
        assertThat(first.number()).isEqualTo(1);
        assertThat(orders.read().standing(first)).isEqualTo(Standing.PROPOSED);
        step(1, Kind.SIGNED, "", "", CHIEF);
        step(1, Kind.FITTED, "engine-41", "", TYPING);
        OrderRevision done = step(1, Kind.ACKNOWLEDGED, "engine-41", "", DRIVER);

        assertThat(orders.read().inForce()).contains(done);
        assertThat(done.signature().orElseThrow().mark().who()).isEqualTo("Chief");
        assertThat(done.fitted("engine-41")).isPresent();
        assertThat(done.fitted("engine-42")).isEmpty();
        assertThat(done.of(Kind.ACKNOWLEDGED, "engine-41"))
                .extracting(step -> step.mark().who())
                .containsExactly("A. Fenn");
        assertThat(store.history().listAbout(Subject.ORDER, "1", 9))
                .extracting(Entry::hat)
                .containsExactly(
                        Hat.OPERATOR.word(), Hat.APPARATUS_OFFICER.word(), Hat.APPROVER.word(), Hat.ANALYST.word());
    }

    @Test
    void laterSignatureSupersedesHolds() {
        orders.propose("one", 1, "{}", TYPING);
        step(1, Kind.SIGNED, "", "", CHIEF);
        orders.propose("two", 1, "{}", TYPING);
        OrderBook before = orders.read();
        assertThat(before.standing(before.get(1))).isEqualTo(Standing.IN_FORCE);
        assertThat(before.standing(before.get(2))).isEqualTo(Standing.PROPOSED);
        step(2, Kind.SIGNED, "", "", CHIEF);
        OrderBook after = orders.read();
        assertThat(after.standing(after.get(1))).isEqualTo(Standing.SUPERSEDED);
        assertThat(after.standing(after.get(2))).isEqualTo(Standing.IN_FORCE);
    }

    @Test
    void withdrawnOrderLeavesNoneInForceHolds() {
        orders.propose("one", 1, "{}", TYPING);
        step(1, Kind.SIGNED, "", "", CHIEF);
        orders.propose("two", 1, "{}", TYPING);
        step(2, Kind.SIGNED, "", "", CHIEF);
        OrderRevision gone = step(2, Kind.WITHDRAWN, "", "", CHIEF);
        assertThat(orders.read().standing(gone)).isEqualTo(Standing.WITHDRAWN);
        assertThat(orders.read().inForce())
                .as("an older order does not come back by itself")
                .isEmpty();
    }

    @Test
    void stepOutOfTurnRefused() {
        orders.propose("one", 1, "{}", TYPING);
        refused(1, Kind.FITTED, "engine-41", "", CHIEF, "the order in force");
        step(1, Kind.SIGNED, "", "", CHIEF);
        refused(1, Kind.SIGNED, "", "", CHIEF, "not yet signed");
        refused(2, Kind.SIGNED, "", "", CHIEF, "1 to 1");
        assertThat(store.history().listAbout(Subject.ORDER, "1", 9)).hasSize(2);
    }

    @Test
    void proposerMayNotSignWhereTwoAreNeededRefused() {
        orders.propose("one", 1, "{}", CHIEF);
        assertThatThrownBy(() -> orders.step(new Orders.Step(1, Kind.SIGNED, "", ""), 2, CHIEF))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("another person than the one who proposed it");
        orders.step(new Orders.Step(1, Kind.SIGNED, "", ""), 2, TYPING);
        assertThat(orders.read().inForce()).isPresent();
    }

    @Test
    void orderFromAnOldKitRefused() {
        saved(store.kits().save("kit two", 1, TYPING));
        assertThatThrownBy(() -> orders.propose("one", 1, "{}", TYPING))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("work the order out again");
        assertThat(orders.read().revisions()).isEmpty();
    }

    @Test
    void reportStaysOpenUntilAnsweredHolds() {
        orders.propose("one", 1, "{}", TYPING);
        step(1, Kind.SIGNED, "", "", CHIEF);
        OrderRevision open = step(1, Kind.REPORTED, "engine-41", "tag of crosslay 2 says 110", DRIVER);
        assertThat(open.openReports("engine-41"))
                .extracting(OrderStep::note)
                .containsExactly("tag of crosslay 2 says 110");
        OrderRevision answered = step(1, Kind.ANSWERED, "engine-41", "old tag taken off", CHIEF);
        assertThat(answered.openReports("engine-41")).isEmpty();
        assertThatThrownBy(() -> new Orders.Step(1, Kind.REPORTED, "engine-41", " "))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new Orders.Step(1, Kind.FITTED, "", "")).isInstanceOf(InvalidInput.class);
    }

    private OrderRevision step(long number, Kind kind, String engine, String note, Act act) {
        return orders.step(new Orders.Step(number, kind, engine, note), 1, act);
    }

    private void refused(long number, Kind kind, String engine, String note, Act act, String why) {
        assertThatThrownBy(() -> step(number, kind, engine, note, act))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining(why);
    }
}
