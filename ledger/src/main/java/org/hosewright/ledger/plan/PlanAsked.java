package org.hosewright.ledger.plan;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hosewright.evidence.plan.Budget;
import org.hosewright.evidence.plan.Optimality;
import org.hosewright.evidence.plan.Question;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;

/** What is asked of a test night.
 *
 * @param hosePackage id of the package to fly
 * @param questions what the night is flown for
 * @param date the night; ages of tests and of gauged bores are taken at it
 * @param onHand how much there is of the package's last hose, where stated
 * @param rise the tip above the pump with all of it laid, negative downhill
 * @param supply most flow that hydrant or tank gives, where limited
 * @param instruments ids of the gauges and meters at hand; absent where all of the kit are
 * @param budget time and water
 * @param optimality what makes one list better than another
 */
public record PlanAsked(
        String hosePackage,
        Set<Question> questions,
        LocalDate date,
        Optional<Length> onHand,
        Length rise,
        Optional<Flow> supply,
        Optional<List<String>> instruments,
        Budget budget,
        Optimality optimality) {
    public PlanAsked {
        questions = Collections.unmodifiableSet(new TreeSet<>(questions));
        instruments = instruments.map(List::copyOf);
    }

    /** The same for another night. */
    public PlanAsked on(LocalDate night) {
        return new PlanAsked(hosePackage, questions, night, onHand, rise, supply, instruments, budget, optimality);
    }
}
