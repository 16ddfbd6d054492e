package org.hosewright.ledger.ready;

import java.time.LocalDate;
import java.util.Optional;

/** One thing that is tested or calibrated again from time to time.
 *
 * @param what the test and the thing, in words
 * @param last the day it was done last, where known
 * @param until the last day that it is good for, where known
 * @param state how it stands on the day it was looked at
 */
public record Due(String what, Optional<LocalDate> last, Optional<LocalDate> until, State state) {
    /** A test is due soon within this many days: time to plan it. Common practice, without a source. */
    private static final int SOON_DAYS = 30;

    /** How a test stands. */
    public enum State {
        IN_DATE("in date"),
        SOON("due soon"),
        OVER("over"),
        NOT_KNOWN("not known"),
        OUT_OF_SERVICE("out of service");

        private final String word;

        State(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    static Due of(String what, Optional<LocalDate> last, Optional<LocalDate> until, LocalDate today) {
        return new Due(what, last, until, until.map(day -> state(day, today)).orElse(State.NOT_KNOWN));
    }

    private static State state(LocalDate until, LocalDate today) {
        if (until.isBefore(today)) {
            return State.OVER;
        }
        return until.isAfter(today.plusDays(SOON_DAYS)) ? State.IN_DATE : State.SOON;
    }
}
