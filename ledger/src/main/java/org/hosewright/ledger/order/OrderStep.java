package org.hosewright.ledger.order;

import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.history.Mark;

/** What a person did with a set of ordered pressures.
 *
 * @param kind what
 * @param engine id of the engine it is about; empty where it is about the whole set
 * @param note what the person reported or answered; empty where there was nothing to say
 * @param mark who, when, why
 */
public record OrderStep(Kind kind, String engine, String note, Mark mark) {

    /** The sorts of step. */
    public enum Kind {
        /** Made it an order. */
        SIGNED("signed", Hat.APPROVER),
        /** Took it back. */
        WITHDRAWN("withdrawn", Hat.APPROVER),
        /** Confirmed that what hangs on the rig is this set. */
        FITTED("fitted", Hat.APPARATUS_OFFICER),
        /** Has read it and will pump by it. */
        ACKNOWLEDGED("acknowledged", Hat.OPERATOR),
        /** Reported that something on the rig does not agree with it. */
        REPORTED("reported", Hat.OPERATOR),
        /** Answered a report. */
        ANSWERED("answered", Hat.APPROVER);

        private final String word;
        private final Hat hat;

        Kind(String word, Hat hat) {
            this.word = word;
            this.hat = hat;
        }

        public String word() {
            return word;
        }

        /** What one must act as to do it. */
        public Hat hat() {
            return hat;
        }

        /** True where it is about one engine rather than the whole set. */
        public boolean isOfEngine() {
            return hat == Hat.APPARATUS_OFFICER || this == ACKNOWLEDGED || this == REPORTED || this == ANSWERED;
        }
    }
}
