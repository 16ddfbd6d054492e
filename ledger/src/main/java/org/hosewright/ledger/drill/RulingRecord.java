package org.hosewright.ledger.drill;

import org.hosewright.ledger.history.Mark;

/** What a person ruled about a reading. Rulings are only added; the last about a row counts.
 *
 * @param id UUIDv7
 * @param rowId the row it is about
 * @param rowVersion the version of the row that the person saw
 * @param verdict what was ruled
 * @param reason why, in the person's words; not blank
 * @param mark who and when
 */
public record RulingRecord(String id, String rowId, long rowVersion, Verdict verdict, String reason, Mark mark) {
    /** What can be ruled. */
    public enum Verdict {
        /** Use it although it looks wrong. */
        USE("use"),
        /** Set it aside. */
        SET_ASIDE("set aside"),
        /** An earlier ruling is taken back: let the analysis judge. */
        AS_JUDGED("as judged");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
