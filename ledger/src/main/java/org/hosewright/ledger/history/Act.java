package org.hosewright.ledger.history;

import org.hosewright.hydraulics.error.InvalidInput;

/** Who is about to do something, and why.
 *
 * @param who the person as the company knows them; not blank
 * @param why the reason in that person's words; empty where none was given
 */
public record Act(String who, String why) {
    public Act {
        if (who.isBlank()) {
            throw new InvalidInput("name of the person", who.isEmpty() ? "" : who, "the name of who does this", "");
        }
    }
}
