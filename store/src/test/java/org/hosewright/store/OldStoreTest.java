package org.hosewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalLong;
import org.flywaydb.core.api.MigrationInfo;
import org.hosewright.ledger.drill.DrillChange;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.DrillRow;
import org.hosewright.ledger.drill.DrillSaving;
import org.hosewright.ledger.drill.DrillSummary;
import org.hosewright.ledger.drill.RulingRecord;
import org.hosewright.ledger.drill.RulingRecord.Verdict;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Entry;
import org.hosewright.ledger.kit.KitRevision;
import org.hosewright.ledger.kit.KitSaving;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.order.OrderRevision;
import org.hosewright.ledger.order.OrderStep;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Stores that earlier forms of the tables wrote: today's code opens them and loses nothing. */
final class OldStoreTest {
    private static final Instant THEN = Instant.parse("2026-05-12T23:04:05.006Z");
    private static final String MAY = "019e1e6e-e68e-7000-935f-d6eba8f42633";
    private static final String OCTOBER = "019e1e6e-e68e-7000-a877-ab73cef3cfb1";

    /** Schemas that ever stood in a release; the second was only a step towards the third. */
    private static final List<Integer> LANDED = List.of(1, 3, 4, 5);

    @TempDir
    Path folder;

    private Path data;

    @BeforeEach
    void write() throws Exception {
        data = Files.createDirectory(folder.resolve("data"));
        load(1, data.resolve("store.sqlite"));
    }

    @Test
    void everyLandedSchemaHasItsStoreUnchanged() throws Exception {
        var source = Sqlite.source(folder.resolve("fresh.sqlite"), Sqlite.config());
        MigrationInfo[] known = Schema.flyway(source).info().all();
        assertThat(known).hasSize(Schema.TODAY);
        assertThat(known[Schema.TODAY - 1].getVersion().getVersion()).isEqualTo(Integer.toString(Schema.TODAY));
        assertThat(LANDED).endsWith(Schema.TODAY);
        for (int version : LANDED) {
            Path file = folder.resolve("old-" + version + ".sqlite");
            load(version, file);
            Schema.migrate(Sqlite.source(file, Sqlite.config()), file.toString());
        }
    }

    @Test
    void kitsOfTheFirstSchemaUnchanged() {
        try (Store store = Store.open(data)) {
            assertThat(store.check()).isEmpty();
            KitRevision first = store.kits().findRevision(1).orElseThrow();
            assertThat(first.text())
                    .isEqualTo("company: Brindle Falls Fire Company\n# 1 \u00be in \u00b1 2 %\nunits: us\n");
            assertThat(List.of(first.at(), first.who(), first.why()))
                    .isEqualTo(List.of(THEN, "Training officer", "first kit"));
            assertThat(store.kits().findLatest().orElseThrow().version()).isEqualTo(2);
            assertThat(store.kits().save("next", 2, new Act("Chief", ""))).isInstanceOf(KitSaving.Saved.class);
        }
    }

    @Test
    void drillsOfTheFirstSchemaUnchanged() {
        try (Store store = Store.open(data)) {
            assertThat(store.drills().listDrills())
                    .containsExactly(
                            new DrillSummary(
                                    OCTOBER,
                                    2,
                                    "October flow test",
                                    LocalDate.of(2026, 10, 3),
                                    0,
                                    OptionalLong.empty()),
                            new DrillSummary(MAY, 5, "drill-night", LocalDate.of(2026, 5, 12), 2, OptionalLong.of(2)));
            DrillRecord drill = store.drills().findDrill(MAY).orElseThrow();
            assertThat(drill.rows())
                    .extracting(row -> row.cells().get("pump [psi]"), DrillRow::version, DrillRow::removed)
                    .containsExactly(tuple("130", 2L, false), tuple("91", 2L, true), tuple("203", 1L, false));
            assertThat(drill.rows().get(1).mark().why()).isEqualTo("typed twice");
            assertThat(drill.rulings())
                    .extracting(RulingRecord::verdict, RulingRecord::reason)
                    .containsExactly(
                            tuple(Verdict.SET_ASIDE, "kink at the door"), tuple(Verdict.USE, "walked it: no kink"));
            assertThat(drill.findAcceptance().orElseThrow().kitVersion()).isEqualTo(2);
            DrillRow first = drill.rows().get(0);
            assertThat(store.drills().listRevisions(first.id()).get(0).cells()).containsEntry("pump [psi]", "103");
            var removal = List.<DrillChange>of(new DrillChange.RemoveRow(first.id(), 2));
            assertThat(store.drills().change(MAY, removal, new Act("Chief", "")))
                    .isInstanceOf(DrillSaving.Saved.class);
            assertThat(store.check()).isEmpty();
        }
    }

    @Test
    void historyOfTheFirstSchemaUnchanged() {
        try (Store store = Store.open(data)) {
            assertThat(store.history().listLatest(99))
                    .extracting(Entry::what)
                    .containsExactly(
                            "accepted the numbers into kit 2",
                            "changed name, date or columns",
                            "started the drill with 0 readings",
                            "ruled to use 1 reading",
                            "removed 1 reading",
                            "changed 1 reading, set 1 reading aside",
                            "started the drill with 3 readings",
                            "saved the kit");
        }
    }

    @Test
    void ordersOfTheThirdSchemaUnchanged() throws Exception {
        Path third = Files.createDirectory(folder.resolve("third"));
        load(3, third.resolve("store.sqlite"));
        try (Store store = Store.open(third)) {
            assertThat(store.check()).isEmpty();
            OrderRevision order = store.orders().read().inForce().orElseThrow();
            assertThat(order.code()).isEqualTo("3f2a90c1");
            assertThat(order.signature().orElseThrow().mark().who()).isEqualTo("Chief");
            assertThat(order.openReports("engine-41"))
                    .extracting(OrderStep::note)
                    .containsExactly("tag of crosslay 2 says 110");
            assertThat(store.history().audit().last())
                    .isEqualTo("63fbdf5d04c151ada69e7a1ae4302b8670773768ca3104169d4235876431df61");
        }
    }

    @Test
    void leavesOfTheFourthSchemaUnchanged() throws Exception {
        Path fourth = Files.createDirectory(folder.resolve("fourth"));
        load(4, fourth.resolve("store.sqlite"));
        try (Store store = Store.open(fourth)) {
            assertThat(store.check()).isEmpty();
            assertThat(store.leaves().list(LeafKind.WALK)).isEmpty();
            Leaf bed = store.leaves().find(LeafKind.BED, "engine-41").orElseThrow();
            assertThat(bed.text()).isEqualTo("{\"crosslay-1\": \"250 ft\"}");
            assertThat(bed.mark().why()).isEqualTo("morning check");
            assertThat(store.leaves().findVersion(LeafKind.WALK, "mill-lane", 1))
                    .isPresent();
            assertThat(store.history().audit().last())
                    .isEqualTo("66ad6c2f1c9cd683741bd8a37344bc1fbfffb1e60cbb3f94c3f67875687e04bc");
        }
    }

    private static void load(int version, Path file) throws Exception {
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                var statement = connection.createStatement()) {
            connection.setAutoCommit(false);
            statement.executeUpdate(script("/stores/v" + version + ".sql"));
            connection.commit();
        }
    }

    private static String script(String name) throws IOException {
        try (InputStream script = OldStoreTest.class.getResourceAsStream(name)) {
            assertThat(script).as("a store as schema " + name + " wrote it").isNotNull();
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
