package org.hosewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.drill.DrillChange;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.DrillRow;
import org.hosewright.ledger.drill.DrillSaving;
import org.hosewright.ledger.drill.DrillSummary;
import org.hosewright.ledger.drill.Drills.Seen;
import org.hosewright.ledger.drill.RulingRecord.Verdict;
import org.hosewright.ledger.history.Act;
import org.junit.jupiter.api.Test;

/** What every store owes a drill: cells as typed, nothing lost, no change over another's. */
abstract class DrillContract extends StoreCase {
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
}
