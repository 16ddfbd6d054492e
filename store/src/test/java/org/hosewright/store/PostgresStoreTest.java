package org.hosewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.kit.KitRevision;
import org.hosewright.ledger.kit.KitSaving;
import org.hosewright.ledger.storage.StorageFailure;
import org.hosewright.ledger.storage.StorageFailure.Kind;
import org.junit.jupiter.api.Test;

/** What holds on PostgreSQL alone: several servers on one database, and what a person is told when it fails. */
final class PostgresStoreTest {
    private static final Act ACT = new Act("Chief", "");
    private static final int WRITERS = 4;
    private static final int ACTS_EACH = 40;

    private final String url = PostgresServer.get().freshDatabase();

    @Test
    void twoServersKeepOneHistoryWithoutAGapHolds() throws Exception {
        var threads = Executors.newFixedThreadPool(WRITERS);
        try (Store one = Store.open(url);
                Store two = Store.open(url)) {
            List<Callable<Integer>> writers = new ArrayList<>();
            for (int i = 0; i < WRITERS; i++) {
                Store store = i % 2 == 0 ? one : two;
                writers.add(() -> write(store));
            }
            int kits = 0;
            for (Future<Integer> kept : threads.invokeAll(writers)) {
                kits += kept.get();
            }
            assertThat(one.check()).isEmpty();
            assertThat(two.history().listLatest(Integer.MAX_VALUE))
                    .hasSize(kits + WRITERS * ACTS_EACH)
                    .first()
                    .matches(entry -> entry.mark().entry()
                            == one.history().listLatest(9999).size());
            assertThat(two.kits().findLatest().orElseThrow().version()).isEqualTo(kits);
        } finally {
            threads.shutdown();
        }
    }

    /** Saves drills, and kits where no other writer was quicker.
     *
     * @return how many kits were kept
     */
    private static int write(Store store) {
        int kept = 0;
        var head = new DrillHead("Load", LocalDate.of(2026, 5, 12), List.of("pump [psi]"));
        for (int i = 0; i < ACTS_EACH; i++) {
            store.drills().create(head, List.of(Map.of("pump [psi]", "103")), ACT);
            long seen = store.kits().findLatest().map(KitRevision::version).orElse(0L);
            if (store.kits().save("kit", seen, ACT) instanceof KitSaving.Saved) {
                kept++;
            }
        }
        return kept;
    }

    @Test
    void heldDatabaseIsToldHolds() throws Exception {
        try (Store store = Store.open(url);
                var other = DriverManager.getConnection(url);
                var statement = other.createStatement()) {
            other.setAutoCommit(false);
            statement.execute("update history_head set last = last");
            assertFails(Kind.IN_USE, () -> store.kits().save("kit", 0, ACT));
            other.rollback();
            assertThat(store.kits().save("kit", 0, ACT)).isInstanceOf(KitSaving.Saved.class);
            assertThat(store.check()).isEmpty();
        }
    }

    @Test
    void readOnlyDatabaseIsToldHolds() throws Exception {
        Store.open(url).close();
        String name = url.replaceFirst(".*/([^?]*).*", "$1");
        sql("alter database " + name + " set default_transaction_read_only = on");
        try (Store store = Store.open(url)) {
            assertFails(Kind.READ_ONLY, () -> store.kits().save("kit", 0, ACT));
        }
    }

    @Test
    void absentServerAndDatabaseAreToldWithoutThePasswordHolds() {
        int port = PostgresServer.get().port();
        String nowhere = "jdbc:postgresql://localhost:1/hosewright?user=postgres&password=verysecret";
        String absent = "jdbc:postgresql://localhost:" + port + "/absent?user=postgres&password=verysecret";
        for (String bad : List.of(nowhere, absent)) {
            var failure = assertFails(Kind.UNREACHABLE, () -> Store.open(bad));
            assertThat(failure).hasMessageStartingWith("jdbc:postgresql://localhost");
            assertThat(failure.getMessage()).doesNotContain("verysecret");
        }
    }

    @Test
    void laterVersionIsRefusedHolds() throws Exception {
        Store.open(url).close();
        sql("insert into flyway_schema_history (installed_rank, version, description, type, script, checksum,"
                + " installed_by, execution_time, success)"
                + " values (999, '999', 'later', 'SQL', 'V999__later.sql', 1, '', 1, true)");
        assertFails(Kind.NEWER, () -> Store.open(url));
    }

    @Test
    void anotherProgramsDatabaseIsRefusedHolds() throws Exception {
        sql("create table birds (name text)");
        assertThat(assertFails(Kind.OTHER, () -> Store.open(url)))
                .hasMessageContaining("There is a database here that is not a Hosewright store.");
    }

    private void sql(String statement) throws SQLException {
        try (var connection = DriverManager.getConnection(url);
                var each = connection.createStatement()) {
            each.execute(statement);
        }
    }

    private static StorageFailure assertFails(Kind kind, org.assertj.core.api.ThrowableAssert.ThrowingCallable work) {
        var failure = catchThrowableOfType(StorageFailure.class, work);
        assertThat(failure).isNotNull();
        assertThat(failure.kind()).as(failure.getMessage()).isEqualTo(kind);
        return failure;
    }
}
