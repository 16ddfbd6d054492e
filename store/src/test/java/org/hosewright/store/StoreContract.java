package org.hosewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.drill.Accepting;
import org.hosewright.ledger.drill.DrillChange;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.DrillRow;
import org.hosewright.ledger.drill.DrillSaving;
import org.hosewright.ledger.drill.DrillSummary;
import org.hosewright.ledger.drill.Drills.Seen;
import org.hosewright.ledger.drill.RulingRecord.Verdict;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Entry;
import org.hosewright.ledger.history.Subject;
import org.hosewright.ledger.kit.KitRevision;
import org.hosewright.ledger.kit.KitSaving;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What every store owes the ledger, whichever database it stands on. */
abstract class StoreContract {
    static final Instant NOW = Instant.parse("2026-05-12T23:04:05.006Z");
    static final Act TYPING = new Act("Training officer", "");
    static final DrillHead HEAD =
            new DrillHead("May flow test", LocalDate.of(2026, 5, 12), List.of("reading", "pump [psi]", "tip [psi]"));

    @TempDir
    Path folder;

    Store store;

    /** Opens the store under test; the same one each time within a test. */
    abstract Store open(Clock clock);

    @BeforeEach
    void openFirst() {
        store = open(Clock.fixed(NOW.plusNanos(789), ZoneOffset.UTC));
    }

    @AfterEach
    void isSoundInTheEnd() {
        assertThat(store.check()).isEmpty();
        store.close();
    }

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
    void drillKeepsCellsAsTypedHolds() {
        Map<String, String> odd = cells("7\u0001\uD83D\uDE92", " 1,03 ", "\u00bd \"\\\n");
        DrillRecord drill = store.drills().create(HEAD, List.of(cells("1", "103", "50"), odd), TYPING);

        assertThat(store.drills().findDrill(drill.id())).contains(drill);
        assertThat(drill.version()).isEqualTo(1);
        assertThat(drill.head()).isEqualTo(HEAD);
        assertThat(drill.rows()).extracting(DrillRow::cells).containsExactly(cells("1", "103", "50"), odd);
        assertThat(drill.rows().get(1).cells().keySet()).containsExactlyElementsOf(odd.keySet());
        assertThat(drill.rows())
                .allMatch(row -> row.version() == 1 && row.mark().at().equals(NOW));
        assertThat(drill.id()).matches("[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}");
        assertThat(Long.parseLong(drill.id().replace("-", "").substring(0, 12), 16))
                .isEqualTo(NOW.toEpochMilli());
    }

    @Test
    void rowsAreEditedRemovedAndPutBackButNeverLostHolds() {
        DrillRecord drill = store.drills().create(HEAD, List.of(cells("1", "103", "50")), TYPING);
        String row = drill.rows().get(0).id();
        change(drill, new DrillChange.EditRow(row, 1, cells("1", "130", "50")));
        DrillRecord removed = saved(store.drills()
                .change(drill.id(), List.of(new DrillChange.RemoveRow(row, 2)), new Act("Chief", "typed twice")));

        assertThat(removed.listStanding()).isEmpty();
        assertThat(removed.rows()).hasSize(1);
        assertThat(removed.rows().get(0).removed()).isTrue();
        assertThat(removed.rows().get(0).mark().who()).isEqualTo("Chief");
        assertThat(removed.rows().get(0).mark().why()).isEqualTo("typed twice");
        assertThat(change(drill, new DrillChange.RestoreRow(row, 3)).listStanding())
                .hasSize(1);
        assertThat(store.drills().listRevisions(row))
                .extracting(DrillRow::version, each -> each.cells().get("pump [psi]"), DrillRow::removed)
                .containsExactly(
                        tuple(1L, "103", false),
                        tuple(2L, "130", false),
                        tuple(3L, "130", true),
                        tuple(4L, "130", false));
    }

    @Test
    void rowConflictShowsBothSidesAndChangesNothingHolds() {
        DrillRecord drill =
                store.drills().create(HEAD, List.of(cells("1", "103", "50"), cells("2", "140", "50")), TYPING);
        String first = drill.rows().get(0).id();
        String second = drill.rows().get(1).id();
        DrillRecord theirs = change(drill, new DrillChange.EditRow(first, 1, cells("1", "104", "50")));

        DrillChange mine = new DrillChange.EditRow(first, 1, cells("1", "105", "50"));
        DrillChange harmless = new DrillChange.RemoveRow(second, 1);
        assertThat(store.drills().change(drill.id(), List.of(harmless, mine), TYPING))
                .isEqualTo(new DrillSaving.Conflict(theirs, List.of(mine)));
        assertThat(store.drills().findDrill(drill.id())).contains(theirs);

        assertThat(change(drill, harmless).listStanding()).hasSize(1);
    }

    @Test
    void rulingsAreOnlyAddedHolds() {
        DrillRecord drill = store.drills().create(HEAD, List.of(cells("1", "203", "50")), TYPING);
        String row = drill.rows().get(0).id();
        assertThat(drill.findRuling(row)).isEmpty();
        DrillRecord aside = change(drill, new DrillChange.Rule(row, 1, Verdict.SET_ASIDE, "a kink at the door"));
        DrillRecord used = change(drill, new DrillChange.Rule(row, 1, Verdict.USE, "walked it: no kink"));
        DrillRecord back = change(drill, new DrillChange.Rule(row, 1, Verdict.AS_JUDGED, "not sure any more"));

        assertThat(aside.findRuling(row).orElseThrow().reason()).isEqualTo("a kink at the door");
        assertThat(aside.rows().get(0).version()).isEqualTo(1);
        assertThat(used.findRuling(row).orElseThrow().verdict()).isEqualTo(Verdict.USE);
        assertThat(back.findRuling(row)).isEmpty();
        assertThat(back.rulings()).hasSize(3).containsAll(used.rulings());
    }

    @Test
    void rulingOnAChangedRowIsAConflictHolds() {
        DrillRecord drill = store.drills().create(HEAD, List.of(cells("1", "203", "50")), TYPING);
        String row = drill.rows().get(0).id();
        change(drill, new DrillChange.EditRow(row, 1, cells("1", "103", "50")));

        DrillChange ruling = new DrillChange.Rule(row, 1, Verdict.SET_ASIDE, "100 psi too high");
        assertThat(store.drills().change(drill.id(), List.of(ruling), TYPING)).isInstanceOf(DrillSaving.Conflict.class);
    }

    @Test
    void headIsChangedWithoutLosingCellsHolds() {
        DrillRecord drill = store.drills().create(HEAD, List.of(cells("1", "103", "")), TYPING);
        var renamed =
                new DrillHead("Flow test", HEAD.date().plusDays(1), List.of("pump [psi]", "reading", "flow [gpm]"));
        DrillRecord changed = change(drill, new DrillChange.EditHead(HEAD, renamed));
        assertThat(changed.head()).isEqualTo(renamed);

        DrillChange stale = new DrillChange.EditHead(HEAD, HEAD);
        assertThat(store.drills().change(drill.id(), List.of(stale), TYPING))
                .isEqualTo(new DrillSaving.Conflict(changed, List.of(stale)));
        var without = new DrillHead("Flow test", HEAD.date(), List.of("reading"));
        assertThatThrownBy(() -> change(drill, new DrillChange.EditHead(renamed, without)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("one with 'pump [psi]' in it, which holds '103'");
        assertThat(store.drills().findDrill(drill.id())).contains(changed);
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
    void listShowsTheLatestNightFirstHolds() {
        DrillRecord may = store.drills().create(HEAD, List.of(cells("1", "103", "50"), cells("2", "", "")), TYPING);
        change(may, new DrillChange.RemoveRow(may.rows().get(0).id(), 1));
        var october = new DrillHead("October", LocalDate.of(2026, 10, 3), List.of("reading"));
        DrillRecord newer = store.drills().create(october, List.of(), TYPING);
        store.drills().accept(new Seen(newer.id(), 1), "kit", 0, TYPING);

        assertThat(store.drills().listDrills())
                .containsExactly(
                        new DrillSummary(newer.id(), 2, "October", october.date(), 0, OptionalLong.of(1)),
                        new DrillSummary(may.id(), 2, HEAD.name(), HEAD.date(), 1, OptionalLong.empty()));
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
    void wrongInputStoresNothingHolds() {
        DrillRecord drill = store.drills().create(HEAD, List.of(cells("1", "103", "50")), TYPING);
        String row = drill.rows().get(0).id();
        var good = new DrillChange.AddRow(cells("2", "140", "50"));
        for (DrillChange bad : List.of(
                new DrillChange.EditRow("no such row", 1, cells("1", "103", "50")),
                new DrillChange.EditRow(row, 1, Map.of("pressure", "103")),
                new DrillChange.AddRow(Map.of("pressure", "103")),
                new DrillChange.AddRow(cells("2", "140\0", "50")),
                new DrillChange.EditRow(row, 1, cells("2", "140", "\uDE92")),
                new DrillChange.Rule(row, 1, Verdict.USE, "a\0b"))) {
            assertThatThrownBy(() -> store.drills().change(drill.id(), List.of(good, bad), TYPING))
                    .isInstanceOf(InvalidInput.class);
        }
        assertThatThrownBy(() -> store.drills().change("no such drill", List.of(good), TYPING))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("drill cannot be 'no such drill'; what would do: the id of a drill in this store.");
        assertThatThrownBy(() -> store.kits().save("a\0b", 0, TYPING)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> store.kits().save("kit", 0, new Act("\uD800", "")))
                .isInstanceOf(InvalidInput.class);
        assertThat(store.drills().findDrill(drill.id())).contains(drill);
        assertThat(store.history().listLatest(9)).hasSize(1);
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

    static Map<String, String> cells(String reading, String pump, String tip) {
        var cells = new LinkedHashMap<String, String>();
        cells.put("tip [psi]", tip);
        cells.put("reading", reading);
        cells.put("pump [psi]", pump);
        return cells;
    }

    DrillRecord change(DrillRecord drill, DrillChange... changes) {
        return saved(store.drills().change(drill.id(), List.of(changes), TYPING));
    }

    static DrillRecord saved(DrillSaving saving) {
        assertThat(saving).isInstanceOf(DrillSaving.Saved.class);
        return ((DrillSaving.Saved) saving).drill();
    }

    static KitRevision saved(KitSaving saving) {
        assertThat(saving).isInstanceOf(KitSaving.Saved.class);
        return ((KitSaving.Saved) saving).revision();
    }
}
