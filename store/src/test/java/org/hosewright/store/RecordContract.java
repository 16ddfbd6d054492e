package org.hosewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.drill.Accepting;
import org.hosewright.ledger.drill.DrillChange;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.Drills.Seen;
import org.hosewright.ledger.drill.RulingRecord.Verdict;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Entry;
import org.hosewright.ledger.history.Subject;
import org.hosewright.ledger.kit.KitRevision;
import org.hosewright.ledger.kit.KitSaving;
import org.junit.jupiter.api.Test;

/** What every store owes the record as a whole: kits, acceptances, history, restart, backup. */
abstract class RecordContract extends StoreCase {
    @Test
    void emptyStoreHolds() {
        assertThat(store.kits().findLatest()).isEmpty();
        assertThat(store.kits().findRevision(1)).isEmpty();
        assertThat(store.drills().listDrills()).isEmpty();
        assertThat(store.drills().findDrill("none")).isEmpty();
        assertThat(store.history().listLatest(10)).isEmpty();
    }

    @Test
    void kitKeepsEveryCharacterAndEveryVersionHolds() {
        String first = "company: Brindle Falls Fire Company # \u00bd \u00b1 \uD83D\uDE92\r\n\ttab 'quote' ; -- \\\n\n";
        KitRevision one = saved(store.kits().save(first, 0, new Act("Chief", "first kit")));
        KitRevision two = saved(store.kits().save("", 1, TYPING));

        assertThat(one.text()).isEqualTo(first);
        assertThat(one.version()).isEqualTo(1);
        assertThat(one.who()).isEqualTo("Chief");
        assertThat(one.why()).isEqualTo("first kit");
        assertThat(one.at()).isEqualTo(NOW);
        assertThat(store.kits().findLatest()).contains(two);
        assertThat(store.kits().findRevision(1)).contains(one);
    }

    @Test
    void kitConflictShowsBothSidesHolds() {
        KitRevision one = saved(store.kits().save("one", 0, TYPING));
        KitRevision two = saved(store.kits().save("two", 1, TYPING));

        assertThat(store.kits().save("mine", 1, TYPING)).isEqualTo(new KitSaving.Conflict(two, "mine"));
        assertThat(store.kits().save("mine", 0, TYPING)).isEqualTo(new KitSaving.Conflict(two, "mine"));
        assertThat(store.kits().findLatest()).contains(two);
        assertThat(store.kits().findRevision(1)).contains(one);
        assertThat(store.history().listLatest(10)).hasSize(2);
        assertThatThrownBy(() -> store.kits().save("mine", 3, TYPING))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("version of the kit cannot be '3'; what would do: 0 to 2.");
    }

    @Test
    void acceptanceSavesKitAndMarkTogetherHolds() {
        saved(store.kits().save("book values", 0, TYPING));
        DrillRecord drill = store.drills().create(HEAD, List.of(cells("1", "103", "50")), TYPING);
        assertThat(drill.accepted()).isFalse();
        var done = (Accepting.Accepted)
                store.drills().accept(new Seen(drill.id(), 1), "measured", 1, new Act("Chief", "good night"));

        assertThat(done.kit().version()).isEqualTo(2);
        assertThat(store.kits().findLatest()).contains(done.kit());
        assertThat(store.drills().findDrill(drill.id())).contains(done.drill());
        assertThat(done.drill().findAcceptance().orElseThrow().kitVersion()).isEqualTo(2);
        assertThat(done.drill().changedSinceAccepted()).isFalse();
        assertThat(store.history().listAbout(Subject.KIT, "kit", 1))
                .extracting(Entry::what)
                .containsExactly("accepted the numbers into kit 2");
        String row = drill.rows().get(0).id();
        assertThat(change(drill, new DrillChange.RemoveRow(row, 1)).changedSinceAccepted())
                .isTrue();
    }

    @Test
    void acceptanceOfWhatHasChangedIsRefusedHolds() {
        KitRevision kit = saved(store.kits().save("kit", 0, TYPING));
        DrillRecord drill = store.drills().create(HEAD, List.of(), TYPING);
        DrillRecord later = change(drill, new DrillChange.AddRow(cells("1", "103", "50")));

        assertThat(store.drills().accept(new Seen(drill.id(), 1), "new", 1, TYPING))
                .isEqualTo(new Accepting.DrillChanged(later));
        assertThat(store.drills().accept(new Seen(drill.id(), 2), "new", 0, TYPING))
                .isEqualTo(new Accepting.KitChanged(kit, "new"));
        assertThat(store.kits().findLatest()).contains(kit);
        assertThat(store.drills().findDrill(drill.id())).contains(later);
    }

    @Test
    void historyTellsEveryActInOrderHolds() {
        store.kits().save("kit", 0, new Act("Chief", "first"));
        DrillRecord drill = store.drills().create(HEAD, List.of(cells("1", "103", "50")), TYPING);
        String row = drill.rows().get(0).id();
        store.drills()
                .change(
                        drill.id(),
                        List.of(
                                new DrillChange.AddRow(cells("2", "140", "50")),
                                new DrillChange.Rule(row, 1, Verdict.SET_ASIDE, "kink"),
                                new DrillChange.AddRow(cells("3", "140", "50"))),
                        TYPING);

        List<Entry> all = store.history().listLatest(10);
        assertThat(all).extracting(entry -> entry.mark().entry()).containsExactly(3L, 2L, 1L);
        assertThat(all)
                .extracting(Entry::what)
                .containsExactly(
                        "added 2 readings, set 1 reading aside", "started the drill with 1 reading", "saved the kit");
        assertThat(all.get(2).mark().who()).isEqualTo("Chief");
        assertThat(all.get(2).mark().why()).isEqualTo("first");
        assertThat(store.history().listAbout(Subject.DRILL, drill.id(), 1)).containsExactly(all.get(0));
        assertThat(store.history().listAbout(Subject.KIT, "kit", 9)).containsExactly(all.get(2));
        assertThat(all.get(0).version()).isEqualTo(2);
    }

    @Test
    void restartKeepsEverythingHolds() {
        store.kits().save("kit", 0, TYPING);
        DrillRecord drill = store.drills().create(HEAD, List.of(cells("1", "103", "50")), TYPING);
        String row = drill.rows().get(0).id();
        change(drill, new DrillChange.Rule(row, 1, Verdict.SET_ASIDE, "kink"));
        store.drills().accept(new Seen(drill.id(), 2), "measured", 1, TYPING);
        var before = List.of(
                store.kits().findLatest(),
                store.drills().findDrill(drill.id()),
                store.drills().listDrills(),
                store.history().listLatest(99));
        store.close();
        store = open(Clock.systemUTC());
        assertThat(List.of(
                        store.kits().findLatest(),
                        store.drills().findDrill(drill.id()),
                        store.drills().listDrills(),
                        store.history().listLatest(99)))
                .isEqualTo(before);
    }

    @Test
    void backupOpensAsTheSameStoreHolds() throws Exception {
        store.kits().save("kit", 0, TYPING);
        DrillRecord drill = store.drills().create(HEAD, List.of(cells("1", "103", "50")), TYPING);
        store.drills().accept(new Seen(drill.id(), 1), "measured", 1, TYPING);
        Path restored = Files.createDirectory(folder.resolve("restored"));
        store.backup(restored.resolve("store.sqlite"));

        assertThat(restored).isDirectoryContaining(path -> path.endsWith("store.sqlite"));
        try (Store copy = Store.open(restored)) {
            assertThat(copy.check()).isEmpty();
            assertThat(copy.kits().findLatest()).isEqualTo(store.kits().findLatest());
            assertThat(copy.drills().findDrill(drill.id()))
                    .isEqualTo(store.drills().findDrill(drill.id()));
            assertThat(copy.history().listLatest(99)).isEqualTo(store.history().listLatest(99));
            saved(copy.kits().save("next", 2, TYPING));
        }
        assertThatThrownBy(() -> store.backup(restored.resolve("store.sqlite")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("a name that no file has yet");
    }
}
