package org.hosewright.ledger.order;

import java.util.List;
import java.util.Optional;
import org.hosewright.ledger.history.Mark;

/** A set of ordered pressures by its number, and what people did with it; what it says is asked for by the number.
 *
 * @param number from 1, one more with each proposal
 * @param code the short code that every sheet of it bears
 * @param kitVersion version of the kit that it was worked out from
 * @param mark who proposed it, when and why
 * @param steps what people did with it since, in order
 */
public record OrderRevision(long number, String code, long kitVersion, Mark mark, List<OrderStep> steps) {
    public OrderRevision {
        steps = List.copyOf(steps);
    }

    /** The same with the steps before an entry of the history only. */
    OrderRevision before(long entry) {
        List<OrderStep> earlier =
                steps.stream().filter(step -> step.mark().entry() < entry).toList();
        return new OrderRevision(number, code, kitVersion, mark, earlier);
    }

    /** The signature, where it has one. */
    public Optional<OrderStep> signature() {
        return first(OrderStep.Kind.SIGNED);
    }

    public boolean withdrawn() {
        return first(OrderStep.Kind.WITHDRAWN).isPresent();
    }

    /** Whether somebody confirmed that an engine bears it. */
    public Optional<OrderStep> fitted(String engine) {
        return of(OrderStep.Kind.FITTED, engine).stream().findFirst();
    }

    /** The steps of a kind about one engine, in order. */
    public List<OrderStep> of(OrderStep.Kind kind, String engine) {
        return steps.stream()
                .filter(step -> step.kind() == kind && step.engine().equals(engine))
                .toList();
    }

    /** Reports from an engine that nobody has answered: those after the last answer. */
    public List<OrderStep> openReports(String engine) {
        List<OrderStep> about =
                steps.stream().filter(step -> step.engine().equals(engine)).toList();
        int answered = -1;
        for (int i = 0; i < about.size(); i++) {
            if (about.get(i).kind() == OrderStep.Kind.ANSWERED) {
                answered = i;
            }
        }
        return about.subList(answered + 1, about.size()).stream()
                .filter(step -> step.kind() == OrderStep.Kind.REPORTED)
                .toList();
    }

    private Optional<OrderStep> first(OrderStep.Kind kind) {
        return steps.stream().filter(step -> step.kind() == kind).findFirst();
    }
}
