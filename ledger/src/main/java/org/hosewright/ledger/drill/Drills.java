package org.hosewright.ledger.drill;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.ledger.history.Act;

/** The company's test nights. Each method is one transaction; what it returns is durable. */
public interface Drills {
    /** Starts a drill, with the rows of an imported file where there is one.
     *
     * @param rows cells by column, in the order of the table; may be empty
     */
    DrillRecord create(DrillHead head, List<Map<String, String>> rows, Act act);

    Optional<DrillRecord> findDrill(String id);

    /** All drills, the latest night first. */
    List<DrillSummary> listDrills();

    /** Makes all of the changes or none.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput an unknown drill or row, or a cell outside the columns
     */
    DrillSaving change(String drillId, List<DrillChange> changes, Act act);

    /** Saves a kit that holds the drill's numbers and marks the drill accepted, both or neither.
     *
     * @param seen id and version of the drill that the numbers were worked out from
     * @param kitText the whole new kit
     * @param kitBasedOn the kit version it was made from
     */
    Accepting accept(Seen seen, String kitText, long kitBasedOn, Act act);

    /** All that one row ever said, oldest first. */
    List<DrillRow> listRevisions(String rowId);

    /** A drill as a person saw it.
     *
     * @param drillId id of the drill
     * @param version its version then
     */
    record Seen(String drillId, long version) {}
}
