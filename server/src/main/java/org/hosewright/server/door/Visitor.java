package org.hosewright.server.door;

import io.javalin.http.Context;
import java.util.Optional;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.person.Person;
import org.hosewright.server.guard.Refusal;

/** The one behind a request: a person with an account, or, while nobody has one, whoever sits at this machine.
 *
 * @param person with an account, where there is one
 */
public record Visitor(Optional<Person> person) {
    private static final String PLACE = Visitor.class.getName();
    private static final Visitor AT_THIS_MACHINE = new Visitor(Optional.empty());

    static Visitor atThisMachine() {
        return AT_THIS_MACHINE;
    }

    static Visitor of(Person person) {
        return new Visitor(Optional.of(person));
    }

    /** The one behind a request that came through a door. */
    public static Visitor of(Context request) {
        Visitor visitor = request.attribute(PLACE);
        return visitor == null ? AT_THIS_MACHINE : visitor;
    }

    void putTo(Context request) {
        request.attribute(PLACE, this);
    }

    /** Makes sure that the visitor may act under a hat.
     *
     * @throws Refusal the hat was not given
     */
    public void require(Hat hat) {
        person.ifPresent(known -> {
            if (!known.mayWear(hat)) {
                throw missing(known, hat.word());
            }
        });
    }

    /** What the visitor does: under the name of the account where there is one, else under the one typed. */
    public Act act(String typed, String why) {
        return new Act(person.map(Person::name).orElse(typed), why);
    }

    static Refusal missing(Person person, String hats) {
        return new Refusal(
                403,
                "Not your hat",
                "This takes the hat of " + hats + ", which " + person.name() + " was not given; an owner of the record"
                        + " gives it on the page people.");
    }
}
