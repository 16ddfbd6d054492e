package org.hosewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.util.Set;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Entry;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.history.Subject;
import org.hosewright.ledger.person.Known;
import org.hosewright.ledger.person.People;
import org.hosewright.ledger.person.Person;
import org.hosewright.ledger.person.PersonDraft;
import org.hosewright.ledger.person.PersonSaving;
import org.hosewright.ledger.person.Secret;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every store owes the people: a name once, an owner always, each change in the history, no secret in it. */
abstract class PeopleContract extends StoreCase {
    private static final Act OWNING = new Act("A. Fenn", "");
    private static final Secret FIRST = new Secret("$argon2id$v=19$m=8,t=1,p=1$c2FsdA$Zmlyc3Q", false);
    private static final Secret SECOND = new Secret("$argon2id$v=19$m=8,t=1,p=1$c2FsdA$c2Vjb25k", true);

    private People people;

    @BeforeEach
    void begin() {
        people = store.people();
    }

    @Test
    void personComesBackUnchanged() {
        assertThat(people.isAnyone()).isFalse();
        Person fenn = owner();
        assertThat(people.isAnyone()).isTrue();
        assertThat(people.find(fenn.id()).map(Known::person)).contains(fenn);
        assertThat(fenn.mark().at()).isEqualTo(NOW);
        Known known = people.findKnown(" a. fenn ").orElseThrow();
        assertThat(known).isEqualTo(new Known(fenn, FIRST));
        assertThat(people.findKnown("B. Moss")).isEmpty();
        people.add(PersonDraft.of("B. Moss", Set.of(Hat.RECORDER)), SECOND, OWNING);
        assertThat(people.list())
                .extracting(Person::name, Person::given)
                .containsExactly(tuple("A. Fenn", false), tuple("B. Moss", true));
    }

    @Test
    void recordWithoutAnOwnerRefused() {
        PersonDraft moss = PersonDraft.of("B. Moss", Set.of(Hat.RECORDER));
        assertThatThrownBy(() -> people.add(moss, FIRST, OWNING)).isInstanceOf(InvalidInput.class);
        assertThat(people.isAnyone()).isFalse();
        Person fenn = owner();
        var without = new PersonDraft("A. Fenn", Set.of(Hat.ANALYST), true);
        var shut = new PersonDraft("A. Fenn", Set.of(Hat.OWNER), false);
        for (PersonDraft draft : new PersonDraft[] {without, shut}) {
            assertThatThrownBy(() -> people.change(fenn.id(), 1, draft, OWNING))
                    .isInstanceOf(InvalidInput.class)
                    .hasMessageContaining("owner");
        }
        people.add(PersonDraft.of("C. Lark", Set.of(Hat.OWNER)), FIRST, OWNING);
        assertThat(people.change(fenn.id(), 1, shut, OWNING)).isInstanceOf(PersonSaving.Saved.class);
        assertThat(people.find(fenn.id()).orElseThrow().person().isOwner()).isFalse();
    }

    @Test
    void sameNameAndAnotherNameRefused() {
        Person fenn = owner();
        PersonDraft again = PersonDraft.of("a. FENN", Set.of(Hat.OPERATOR));
        assertThatThrownBy(() -> people.add(again, FIRST, OWNING)).isInstanceOf(InvalidInput.class);
        PersonDraft renamed = PersonDraft.of("A. Fern", Set.of(Hat.OWNER));
        assertThatThrownBy(() -> people.change(fenn.id(), 1, renamed, OWNING)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> PersonDraft.of(" ", Set.of(Hat.OWNER))).isInstanceOf(InvalidInput.class);
        assertThat(people.list()).containsExactly(fenn);
    }

    @Test
    void changeFromBeforeAnothersChangeRefused() {
        Person fenn = owner();
        var more = new PersonDraft("A. Fenn", Set.of(Hat.OWNER, Hat.APPROVER), true);
        assertThat(people.change(fenn.id(), 1, more, OWNING)).isInstanceOf(PersonSaving.Saved.class);
        PersonSaving late = people.change(fenn.id(), 1, more, OWNING);
        assertThat(late).isInstanceOf(PersonSaving.Conflict.class);
        assertThat(((PersonSaving.Conflict) late).stored().version()).isEqualTo(2);
    }

    @Test
    void historyTellsChangesButNoSecretHolds() {
        Person fenn = owner();
        people.changeSecret(fenn.id(), new Secret(SECOND.hash(), false), OWNING);
        people.changeSecret(fenn.id(), SECOND, new Act("the machine", "lost password"));
        assertThat(people.findKnown("A. Fenn").orElseThrow().secret()).isEqualTo(SECOND);
        assertThat(people.find(fenn.id()).orElseThrow().person().version()).isEqualTo(3);
        assertThat(store.history().listAbout(Subject.PERSON, fenn.id(), 9))
                .extracting(Entry::what, Entry::hat)
                .containsExactly(
                        tuple("gave A. Fenn another password", "owner"),
                        tuple("chose another password", ""),
                        tuple("gave A. Fenn an account: approver, owner", "owner"));
        assertThat(store.history().listLatest(9).toString()).doesNotContain("argon2");
        assertThat(SECOND.toString()).doesNotContain("argon2");
    }

    private Person owner() {
        return people.add(PersonDraft.of("A. Fenn", Set.of(Hat.OWNER, Hat.APPROVER)), FIRST, OWNING);
    }
}
