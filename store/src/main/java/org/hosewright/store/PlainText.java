package org.hosewright.store;

import java.nio.charset.StandardCharsets;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.drill.DrillHead;

/** Text that every database keeps character for character. */
final class PlainText {
    private PlainText() {}

    /** As {@link #check(String, String)}, for the name and the columns of a drill. */
    static void check(DrillHead head) {
        check("name of the drill", head.name());
        head.columns().forEach(column -> check("column name", column));
    }

    /** Refuses what would come back otherwise than it went in.
     *
     * @throws InvalidInput the text holds a NUL or half of a character
     */
    static void check(String what, String text) {
        if (text.indexOf('\0') >= 0 || !StandardCharsets.UTF_8.newEncoder().canEncode(text)) {
            throw new InvalidInput(what, text.replace('\0', '\uFFFD'), "text without control characters", "");
        }
    }
}
