package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.person.Known;
import org.hosewright.ledger.person.People;
import org.hosewright.ledger.person.Person;
import org.hosewright.ledger.person.PersonDraft;
import org.hosewright.ledger.person.PersonSaving;
import org.hosewright.server.door.Admission;
import org.hosewright.server.door.Doorkeeper;
import org.hosewright.server.door.Visitor;
import org.hosewright.server.password.Passwords;

/** The people with accounts, for the owners of the record. The first account is made by whoever sits at the machine. */
final class PeopleRoutes {
    /** The longest content taken [bytes]. */
    static final int MOST_BYTES = 10_000;

    private final People people;
    private final Passwords passwords;
    private final Doorkeeper doorkeeper;

    PeopleRoutes(People people, Passwords passwords, Doorkeeper doorkeeper) {
        this.people = people;
        this.passwords = passwords;
        this.doorkeeper = doorkeeper;
    }

    List<Route> list() {
        return List.of(
                Route.get("/people", Admission.of(Hat.OWNER), this::listAll),
                Route.post("/people", Hat.OWNER, this::add),
                Route.post("/people/{person}", Hat.OWNER, this::change),
                Route.post("/people/{person}/password", Hat.OWNER, this::givePassword));
    }

    private void listAll(Context answer) {
        ObjectNode json = Answer.object();
        ArrayNode list = json.putArray("people");
        people.list().forEach(person -> list.add(shown(person)));
        for (Hat hat : Hat.values()) {
            json.withArray("hats").add(hat.word());
        }
        Answer.json(answer, json);
    }

    private void add(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "name", "hats", "password"), MOST_BYTES);
        var draft = PersonDraft.of(asked.text("name"), hats(asked));
        boolean first = !doorkeeper.isAnyone();
        var secret = passwords.secret(asked.text("password"), draft.name(), !first);
        Act act = first ? new Act(draft.name(), asked.findText("why").orElse("")) : asked.act();
        Person added = people.add(draft, secret, act);
        if (first) {
            doorkeeper.begin(answer, new Known(added, secret));
        }
        Answer.json(answer.status(201), shown(added));
    }

    private void change(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "hats", "active", "basedOn"), MOST_BYTES);
        Person person = of(answer);
        var draft = new PersonDraft(person.name(), hats(asked), asked.isYes("active"));
        PersonSaving saving = people.change(person.id(), asked.number("basedOn"), draft, asked.act());
        if (saving instanceof PersonSaving.Saved saved) {
            Answer.json(answer, shown(saved.person()));
        } else if (saving instanceof PersonSaving.Conflict conflict) {
            Problem.conflict(
                    answer,
                    "Somebody changed what " + person.name() + " may do in between; nothing was changed.",
                    shown(conflict.stored()));
        }
    }

    private void givePassword(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "password"), MOST_BYTES);
        Person person = of(answer);
        boolean own = Visitor.of(answer).person().map(Person::id).equals(Optional.of(person.id()));
        if (own) {
            throw Refused.ownPassword();
        }
        Answer.json(
                answer,
                shown(people.changeSecret(
                        person.id(), passwords.secret(asked.text("password"), person.name(), true), asked.act())));
    }

    private Person of(Context request) {
        return people.find(request.pathParam("person"))
                .orElseThrow(() -> Refused.unknown("person"))
                .person();
    }

    private static Set<Hat> hats(Asked asked) {
        return asked.texts("hats").stream().map(Hat::of).collect(Collectors.toSet());
    }

    private static ObjectNode shown(Person person) {
        ObjectNode json = RecordJson.mark(person.mark());
        json.put("id", person.id()).put("version", person.version()).put("name", person.name());
        json.put("active", person.active()).put("given", person.given());
        person.hats().stream().sorted().map(Hat::word).forEach(json.putArray("hats")::add);
        return json;
    }
}
