package org.hosewright.ledger.order;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Act;

/** The company's ordered pressures through time. Each method is one transaction; what it returns is durable. */
public interface Orders {
    /** Every set with every step, without what the sets say. */
    OrderBook read();

    /** What a set says, in the open format, character for character as it was proposed; it never changes.
     *
     * @throws InvalidInput there is no such set
     */
    String text(long number);

    /** Adds a set as the next number.
     *
     * @param code the short code that its sheets will bear
     * @param kitVersion the kit that it was worked out from
     * @param text the set in the open format
     * @throws InvalidInput the kit has changed since, so that the set would be old before it was signed
     */
    OrderRevision propose(String code, long kitVersion, String text, Act act);

    /** Adds a step, with the hat that it takes.
     *
     * @param signers how many different people a signature takes
     * @throws InvalidInput the step may not follow on how the set stands now
     */
    OrderRevision step(Step step, int signers, Act act);

    /** A step about to be taken.
     *
     * @param number number of the set
     * @param kind what
     * @param engine id of the engine it is about; empty where it is about the whole set
     * @param note what is reported or answered
     */
    record Step(long number, OrderStep.Kind kind, String engine, String note) {
        public Step {
            if (kind.isOfEngine() == engine.isEmpty()) {
                throw new InvalidInput(
                        "engine of what is " + kind.word(), engine, kind.isOfEngine() ? "an engine" : "none", "");
            }
            boolean says = kind == OrderStep.Kind.REPORTED || kind == OrderStep.Kind.ANSWERED;
            if (says && note.isBlank()) {
                throw new InvalidInput("what is " + kind.word(), note, "what was found, in words", "");
            }
        }
    }
}
