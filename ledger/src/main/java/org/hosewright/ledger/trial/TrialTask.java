package org.hosewright.ledger.trial;

import java.util.List;
import org.hosewright.evidence.trial.Measure;
import org.hosewright.evidence.trial.SampleSize;
import org.hosewright.evidence.trial.Stake;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;

/** What is measured in a trial, how, and from where on a difference changes what the company does.
 *
 * @param measure loss of hoses or flow of nozzles
 * @param held what every re-lay is run at: a flow for hoses, a tip pressure for nozzles
 * @param over length of hose in the trial
 * @param longest the longest stretch that the company would lay with it
 * @param matters the least difference at the longest stretch that changes what the company does
 * @param scatter how far re-lays of one kind are thought to differ, a standard deviation
 * @param step the finest step that a gauge or the meter is read in
 */
public record TrialTask(
        Measure measure,
        Quantity held,
        Length over,
        Length longest,
        Quantity matters,
        Quantity scatter,
        Quantity step) {
    public TrialTask {
        boolean loss = measure == Measure.LOSS;
        require("what is held alike", held, loss ? Flow.class : Pressure.class);
        for (Quantity measured : List.of(matters, scatter, step)) {
            require("difference, scatter or step", measured, loss ? Pressure.class : Flow.class);
        }
        Numbers.requirePositive("what is held alike", held.si());
        Numbers.requirePositive("scatter between re-lays", scatter.si());
        Numbers.requireNotNegative("step of reading", step.si());
        Numbers.requirePositive("difference that matters", matters.si());
    }

    private static void require(String what, Quantity quantity, Class<? extends Quantity> kind) {
        if (!kind.isInstance(quantity)) {
            String allowed = kind.equals(Flow.class) ? "a flow" : "a pressure";
            throw new InvalidInput(what, Numbers.plain(quantity.si()), allowed, "");
        }
    }

    /** What hangs on it. A loss is the difference of two gauges, each read in steps. */
    public Stake stake() {
        double steps = measure == Measure.LOSS ? Math.sqrt(2) : 1;
        return new Stake(measure, over, longest, matters.si(), steps * step.si());
    }

    /** The difference that matters as the trial would see it. */
    public Quantity find() {
        return measure.quantity(stake().mattersHere());
    }

    /** Re-lays of each kind that find it four times in five.
     *
     * @throws InvalidInput more than anybody would lay
     */
    public int needed(int kinds) {
        int most = TrialPlan.MOST_RELAYS;
        return new SampleSize(kinds, stake().mattersHere(), scatter.si(), SampleSize.POWER)
                .find().stream()
                        .filter(relays -> relays <= most)
                        .findFirst()
                        .orElseThrow(() -> new InvalidInput(
                                "difference that matters",
                                "smaller than " + most + " re-lays of each kind can find beside this scatter",
                                "a larger difference, more hose in the trial, or re-lays that differ less",
                                ""));
    }
}
