package org.hosewright.ledger.drill;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Hat;

/** One change to a test night. A change to something that exists names what the person saw of it. */
public sealed interface DrillChange {
    /** What a person acts as who makes these changes together: who rules on readings is an analyst, who only writes
     * them down a recorder.
     */
    static Hat hat(List<DrillChange> changes) {
        return changes.stream().anyMatch(Rule.class::isInstance) ? Hat.ANALYST : Hat.RECORDER;
    }

    /** A change to one row. */
    sealed interface OnRow extends DrillChange {
        /** The row's id. */
        String rowId();

        /** The row's version that the person saw. */
        long version();
    }

    /** A row at the end of the table.
     *
     * @param cells text by column
     */
    record AddRow(Map<String, String> cells) implements DrillChange {
        public AddRow {
            cells = kept(cells);
        }
    }

    /** A row typed over.
     *
     * @param cells all of its cells, not only the changed ones
     */
    record EditRow(String rowId, long version, Map<String, String> cells) implements OnRow {
        public EditRow {
            cells = kept(cells);
        }
    }

    /** A row taken out of the table; it stays in the record. */
    record RemoveRow(String rowId, long version) implements OnRow {}

    /** A removed row put back, with the cells it had. */
    record RestoreRow(String rowId, long version) implements OnRow {}

    /** A ruling about a row.
     *
     * @param reason not blank
     */
    record Rule(String rowId, long version, RulingRecord.Verdict verdict, String reason) implements OnRow {
        public Rule {
            if (reason.isBlank()) {
                throw new InvalidInput("reason of the ruling", "", "a few words on why", "");
            }
        }
    }

    /** Another name, date or set of columns. A column that holds text anywhere cannot be dropped.
     *
     * @param seen the head that the person saw
     * @param head as it shall be
     */
    record EditHead(DrillHead seen, DrillHead head) implements DrillChange {}

    private static Map<String, String> kept(Map<String, String> cells) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    }
}
