package org.hosewright.ledger.person;

import java.util.Set;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Hat;

/** A person about to be written down, or changed.
 *
 * @param name 1 to 80 characters without control characters or blanks at its ends
 * @param hats at least one
 * @param active false where the person may not sign in
 */
public record PersonDraft(String name, Set<Hat> hats, boolean active) {
    private static final int LONGEST_NAME = 80;

    public PersonDraft {
        boolean plain = name.equals(name.strip()) && name.codePoints().noneMatch(Character::isISOControl);
        if (name.isEmpty() || name.length() > LONGEST_NAME || !plain) {
            throw new InvalidInput("name of the person", name, "a name of at most " + LONGEST_NAME + " characters", "");
        }
        if (hats.isEmpty()) {
            throw new InvalidInput("hats of " + name, "none", "at least one", "");
        }
        hats = Set.copyOf(hats);
    }

    /** A person who may sign in. */
    public static PersonDraft of(String name, Set<Hat> hats) {
        return new PersonDraft(name.strip(), hats, true);
    }
}
