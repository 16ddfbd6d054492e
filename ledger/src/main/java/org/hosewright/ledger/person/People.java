package org.hosewright.ledger.person;

import java.util.List;
import java.util.Optional;
import org.hosewright.ledger.history.Act;

/** The people of the company who have accounts. Nobody is ever deleted; at least one active person owns the record
 * from the first account on. Each method is one transaction; what it returns is durable.
 */
public interface People {
    /** True once there is an account: from then on the doors ask who comes in. */
    boolean isAnyone();

    /** All of them by name, also those who may no longer sign in. */
    List<Person> list();

    Optional<Known> find(String id);

    /** The person of a name, whatever the case of its letters. */
    Optional<Known> findKnown(String name);

    /** Writes a person down. The first one must own the record.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput the name is taken, or the first person does not own the record
     */
    Person add(PersonDraft draft, Secret secret, Act act);

    /** Changes hats, or whether the person may sign in.
     *
     * @param basedOn the version that was seen
     * @throws org.hosewright.hydraulics.error.InvalidInput there is no such person, the name is another one, or nobody
     *     would own the record any more
     */
    PersonSaving change(String id, long basedOn, PersonDraft draft, Act act);

    /** Gives a person another password.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput there is no such person
     */
    Person changeSecret(String id, Secret secret, Act act);
}
