package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.person.Known;
import org.hosewright.ledger.person.People;
import org.hosewright.ledger.person.Person;
import org.hosewright.ledger.person.Secret;
import org.hosewright.server.door.Admission;
import org.hosewright.server.door.Doorkeeper;
import org.hosewright.server.door.Visitor;
import org.hosewright.server.password.Passwords;

/** Signing in and out, and choosing another password. */
final class SessionRoutes {
    private static final String CHOSEN = "chosen by the person";

    private final People people;
    private final Passwords passwords;
    private final Doorkeeper doorkeeper;

    SessionRoutes(People people, Passwords passwords, Doorkeeper doorkeeper) {
        this.people = people;
        this.passwords = passwords;
        this.doorkeeper = doorkeeper;
    }

    List<Route> list() {
        return List.of(
                Route.get("/session", Admission.ANYBODY, this::show),
                Route.post("/session", Admission.ANYBODY, this::signIn),
                Route.post("/session/end", Admission.ANYBODY, this::end),
                Route.post("/session/password", Admission.ARRIVING, this::choose));
    }

    private void show(Context answer) {
        send(answer, doorkeeper.find(answer));
    }

    private void signIn(Context answer) {
        Asked asked = Asked.of(answer, Set.of("name", "password"), PeopleRoutes.MOST_BYTES);
        send(answer, Optional.of(doorkeeper.signIn(answer, asked.text("name"), asked.text("password"))));
    }

    private void end(Context answer) {
        doorkeeper.end(answer);
        send(answer, Optional.empty());
    }

    private void choose(Context answer) {
        Asked asked = Asked.of(answer, Set.of("password", "wanted"), PeopleRoutes.MOST_BYTES);
        Person person = Visitor.of(answer).person().orElseThrow(Refused::withoutAccounts);
        doorkeeper.confirm(person, asked.text("password"));
        Secret secret = passwords.secret(asked.text("wanted"), person.name(), false);
        Person changed =
                people.changeSecret(person.id(), secret, Visitor.of(answer).act("", CHOSEN));
        doorkeeper.begin(answer, new Known(changed, secret));
        send(answer, Optional.of(changed));
    }

    private void send(Context answer, Optional<Person> person) {
        ObjectNode json = Answer.object().put("accounts", doorkeeper.isAnyone());
        person.ifPresent(known -> {
            json.put("name", known.name()).put("given", known.given());
            known.hats().stream().sorted().map(Hat::word).forEach(json.putArray("hats")::add);
        });
        Answer.json(answer, json);
    }
}
