package org.hosewright.ledger.person;

import java.util.Set;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.history.Mark;

/** A person with an account, as it stands since its last change.
 *
 * @param id unique, made by the store
 * @param version from 1, one more with each change, a new password among them
 * @param name by which the record knows the person; unique whatever the case of its letters, and kept for good
 * @param hats what the person may act as
 * @param active false where the person may no longer sign in
 * @param given true where somebody else chose the password, so that the person must choose another one first
 * @param mark who changed it last, when and why
 */
public record Person(String id, long version, String name, Set<Hat> hats, boolean active, boolean given, Mark mark) {
    public Person {
        hats = Set.copyOf(hats);
    }

    public boolean mayWear(Hat hat) {
        return hats.contains(hat);
    }

    /** True for one who manages people today. */
    public boolean isOwner() {
        return active && mayWear(Hat.OWNER);
    }
}
