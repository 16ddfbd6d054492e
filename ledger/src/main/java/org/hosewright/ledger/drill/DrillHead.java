package org.hosewright.ledger.drill;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;

/** What stands above the table of a test night.
 *
 * @param name the night's name; not blank
 * @param date the night, in the company's zone
 * @param columns the table's columns in order; each once, none blank
 */
public record DrillHead(String name, LocalDate date, List<String> columns) {
    public DrillHead {
        columns = List.copyOf(columns);
        if (name.isBlank()) {
            throw new InvalidInput("name of the drill", "", "a name such as \"October flow test\"", "");
        }
        var seen = new HashSet<String>();
        for (String column : columns) {
            if (column.isBlank()) {
                throw new InvalidInput("column name", "", "a name for each column", "drill " + name);
            }
            if (!seen.add(column)) {
                throw new InvalidInput("column name", column, "each column once", "drill " + name);
            }
        }
    }
}
