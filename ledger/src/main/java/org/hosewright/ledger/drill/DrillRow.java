package org.hosewright.ledger.drill;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.hosewright.ledger.history.Mark;

/** One row of a test night's table, exactly as typed.
 *
 * @param id UUIDv7, made when the row was added; not the reading's own name, which is a cell
 * @param version from 1, one more with each change to this row
 * @param cells text by column, in the order given; a cell left empty may be absent
 * @param removed true where a person took it out of the table; it stays in the record
 * @param mark who made this version, when and why
 */
public record DrillRow(String id, long version, Map<String, String> cells, boolean removed, Mark mark) {
    public DrillRow {
        cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    }
}
