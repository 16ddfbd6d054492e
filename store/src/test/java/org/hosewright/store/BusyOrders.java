package org.hosewright.store;

import java.util.List;
import java.util.Random;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.order.OrderRevision;
import org.hosewright.ledger.order.OrderStep;
import org.hosewright.ledger.order.Orders;

/** Proposes, signs, fits and acknowledges orders as fast as it can, against others who do the same.
 *
 * <p>Lines: "order NUMBER STEPS ENTRY SUM". The code of each set is the sum of its text, so that a half-made one shows.
 */
final class BusyOrders {
    private static final List<String> ENGINES = List.of("engine-1", "engine-2", "engine-3");

    private final Store store;
    private final Random random;
    private final Act act;

    BusyOrders(Store store, Random random, Act act) {
        this.store = store;
        this.random = random;
        this.act = act;
    }

    /** One set from the proposal to the rigs, as far as nobody else comes between. */
    void order(long kitVersion) {
        try {
            String text = text();
            OrderRevision proposed = store.orders().propose(code(text), kitVersion, text, act);
            acknowledge(proposed, text);
            long number = proposed.number();
            if (random.nextInt(5) == 0) {
                step(text, number, OrderStep.Kind.WITHDRAWN, "", "");
                return;
            }
            step(text, number, OrderStep.Kind.SIGNED, "", "");
            for (String engine : ENGINES) {
                step(text, number, OrderStep.Kind.FITTED, engine, "");
                step(text, number, OrderStep.Kind.ACKNOWLEDGED, engine, "");
            }
            step(text, number, OrderStep.Kind.REPORTED, ENGINES.get(0), "the tag says another figure");
            step(text, number, OrderStep.Kind.ANSWERED, ENGINES.get(0), "looked into");
        } catch (InvalidInput refused) {
            // Another writer changed the kit or proposed a set meanwhile: this one ends here, as it would for a person.
            return;
        }
    }

    private void step(String text, long number, OrderStep.Kind kind, String engine, String note) {
        acknowledge(store.orders().step(new Orders.Step(number, kind, engine, note), 1, act), text);
    }

    /** Some kilobytes, so that a set spans pages. */
    private String text() {
        return "a line of pressures\n".repeat(50 + random.nextInt(400)) + random.nextLong();
    }

    /** The steps that this writer's own act brought: those of others may have followed and are theirs to say. */
    private void acknowledge(OrderRevision revision, String text) {
        long entry = revision.steps().stream()
                .filter(step -> step.mark().who().equals(act.who()))
                .mapToLong(step -> step.mark().entry())
                .max()
                .orElse(revision.mark().entry());
        BusyWriter.say("order " + revision.number() + " " + entry + " " + sum(revision, text, entry));
    }

    /** What a set was once an entry was made. */
    static long sum(OrderRevision revision, String text, long entry) {
        var words = new StringBuilder(revision.code()).append(revision.kitVersion());
        revision.steps().stream()
                .filter(step -> step.mark().entry() <= entry)
                .forEach(step -> words.append(step.kind())
                        .append(step.engine())
                        .append(step.note())
                        .append(step.mark()));
        return BusyWriter.sum(words + text);
    }

    static String code(String text) {
        return Long.toHexString(BusyWriter.sum(text));
    }
}
