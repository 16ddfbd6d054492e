package org.hosewright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.history.Subject;
import org.hosewright.ledger.person.Known;
import org.hosewright.ledger.person.People;
import org.hosewright.ledger.person.Person;
import org.hosewright.ledger.person.PersonDraft;
import org.hosewright.ledger.person.PersonSaving;
import org.hosewright.ledger.person.Secret;
import org.jdbi.v3.core.Handle;

/** People as one row a person and one row a version. */
final class StoredPeople implements People {
    private static final String LATEST = "select v.id, v.version, v.name, v.hats, v.active, v.secret, v.given, "
            + Marks.COLUMNS + " from person p join person_version v on v.id = p.id and v.version = p.version"
            + " join history h on h.entry = v.entry";

    private final Transactions transactions;

    StoredPeople(Transactions transactions) {
        this.transactions = transactions;
    }

    @Override
    public boolean isAnyone() {
        return transactions.read(handle -> handle.createQuery("select count(*) from person")
                        .mapTo(Long.class)
                        .one()
                > 0);
    }

    @Override
    public List<Person> list() {
        return transactions.read(handle -> all(handle).stream()
                .map(Known::person)
                .sorted((one, other) -> one.name().compareToIgnoreCase(other.name()))
                .toList());
    }

    @Override
    public Optional<Known> find(String id) {
        return transactions.read(handle -> latest(handle, id));
    }

    @Override
    public Optional<Known> findKnown(String name) {
        return transactions.read(handle -> named(all(handle), name));
    }

    @Override
    public Person add(PersonDraft draft, Secret secret, Act act) {
        PlainText.check("name of the person", draft.name());
        return transactions.write(act, writing -> {
            List<Known> there = all(writing.handle());
            if (named(there, draft.name()).isPresent()) {
                throw new InvalidInput("name of the person", draft.name(), "a name that nobody has yet", "");
            }
            String id = writing.newId();
            requireOwner(there, id, draft);
            writing.handle().execute("insert into person (id, version) values (?, 1)", id);
            String done = "gave " + draft.name() + " an account: " + words(draft);
            writing.note(Hat.OWNER, done, Subject.PERSON, id, 1);
            return append(writing, id, 1, new Version(draft, secret));
        });
    }

    @Override
    public PersonSaving change(String id, long basedOn, PersonDraft draft, Act act) {
        return transactions.write(act, writing -> {
            Known last = get(writing.handle(), id);
            if (!last.person().name().equals(draft.name())) {
                throw new InvalidInput(
                        "name of the person", draft.name(), last.person().name(), "");
            }
            if (last.person().version() != basedOn) {
                return writing.turnBack(new PersonSaving.Conflict(last.person()));
            }
            requireOwner(all(writing.handle()), id, draft);
            String done = "changed what " + draft.name() + " may do: " + words(draft);
            writing.note(Hat.OWNER, done, Subject.PERSON, id, basedOn + 1);
            return new PersonSaving.Saved(append(writing, id, basedOn + 1, new Version(draft, last.secret())));
        });
    }

    @Override
    public Person changeSecret(String id, Secret secret, Act act) {
        return transactions.write(act, writing -> {
            Known last = get(writing.handle(), id);
            long version = last.person().version() + 1;
            if (secret.given()) {
                String done = "gave " + last.person().name() + " another password";
                writing.note(Hat.OWNER, done, Subject.PERSON, id, version);
            } else {
                writing.noteOfOwn("chose another password", Subject.PERSON, id, version);
            }
            Person person = last.person();
            var draft = new PersonDraft(person.name(), person.hats(), person.active());
            return append(writing, id, version, new Version(draft, secret));
        });
    }

    private static void count(Writing writing, String id, long version) {
        writing.handle()
                .createUpdate("update person set version = :version where id = :id")
                .bind("version", version)
                .bind("id", id)
                .execute();
    }

    private static Person append(Writing writing, String id, long version, Version what) {
        count(writing, id, version);
        writing.handle()
                .createUpdate("insert into person_version (id, version, name, hats, active, secret, given, entry)"
                        + " values (:id, :version, :name, :hats, :active, :secret, :given, :entry)")
                .bind("id", id)
                .bind("version", version)
                .bind("name", what.draft().name())
                .bind("hats", hats(what.draft().hats()))
                .bind("active", what.draft().active() ? 1 : 0)
                .bind("secret", what.secret().hash())
                .bind("given", what.secret().given() ? 1 : 0)
                .bind("entry", writing.mark().entry())
                .execute();
        PersonDraft draft = what.draft();
        return new Person(
                id,
                version,
                draft.name(),
                draft.hats(),
                draft.active(),
                what.secret().given(),
                writing.mark());
    }

    private static void requireOwner(List<Known> there, String id, PersonDraft draft) {
        boolean owned = draft.active() && draft.hats().contains(Hat.OWNER);
        boolean ownedByOther = there.stream()
                .map(Known::person)
                .anyMatch(person -> person.isOwner() && !person.id().equals(id));
        if (!owned && !ownedByOther) {
            throw new InvalidInput(
                    "hats of " + draft.name(),
                    words(draft),
                    "owner among them: somebody must be able to say who may work with the record",
                    "");
        }
    }

    private static Known get(Handle handle, String id) {
        return latest(handle, id).orElseThrow(() -> new InvalidInput("person", id, "one who is among the people", ""));
    }

    private static Optional<Known> latest(Handle handle, String id) {
        return handle.createQuery(LATEST + " where p.id = :id")
                .bind("id", id)
                .map((row, context) -> known(row))
                .findOne();
    }

    private static List<Known> all(Handle handle) {
        return handle.createQuery(LATEST).map((row, context) -> known(row)).list();
    }

    private static Optional<Known> named(List<Known> people, String name) {
        String plain = name.strip();
        return people.stream()
                .filter(known -> known.person().name().equalsIgnoreCase(plain))
                .findFirst();
    }

    private static Known known(ResultSet row) throws SQLException {
        boolean given = row.getLong("given") != 0;
        var person = new Person(
                row.getString("id"),
                row.getLong("version"),
                row.getString("name"),
                Arrays.stream(row.getString("hats").split(",")).map(Hat::of).collect(Collectors.toSet()),
                row.getLong("active") != 0,
                given,
                Marks.of(row));
        return new Known(person, new Secret(row.getString("secret"), given));
    }

    private static String words(PersonDraft draft) {
        return draft.active() ? hats(draft.hats()).replace(",", ", ") : "may not sign in";
    }

    private static String hats(Set<Hat> hats) {
        return hats.stream().sorted().map(Hat::word).collect(Collectors.joining(","));
    }

    /** What one version says. */
    private record Version(PersonDraft draft, Secret secret) {}
}
