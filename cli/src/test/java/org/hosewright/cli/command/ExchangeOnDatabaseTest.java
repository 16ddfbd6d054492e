package org.hosewright.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.hosewright.files.exchange.KeyFile;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.kit.Revision;
import org.hosewright.files.order.OrderText;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.ledger.card.CardAnalysis;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.order.OrderSet;
import org.hosewright.ledger.order.OrderStep;
import org.hosewright.ledger.order.Orders;
import org.hosewright.store.Store;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two counties, each on a PostgreSQL database of its own, hand packages over; the key stays in the folder. */
@Tag("long")
final class ExchangeOnDatabaseTest {
    private static final Act ACT = new Act("T. Marsh", "test");

    @TempDir
    private Path folder;

    @Test
    void packageGoesFromOneDatabaseToTheOtherHolds() throws IOException, SQLException {
        try (EmbeddedPostgres postgres =
                EmbeddedPostgres.builder().setServerConfig("fsync", "off").start()) {
            String vale = company(postgres, "vale", "vale.kit.yaml");
            String falls = company(postgres, "falls", "brindle-falls.kit.yaml");
            Path file = folder.resolve("for-falls.exchange");
            Ran handed = run(vale, "vale", "export", "--out", file.toString(), "--who", "T. Marsh");
            assertThat(handed.err()).isEmpty();
            String fingerprint = run(vale, "vale", "key").out().lines().toList().get(1);
            Ran kept = run(
                    falls,
                    "falls",
                    "import",
                    file.toString(),
                    "--keep",
                    "--who",
                    "R. Vane",
                    "--fingerprint",
                    fingerprint);
            assertThat(kept.err()).isEmpty();
            assertThat(kept.out()).contains("Kept, as theirs.");
            assertThat(run(falls, "falls", "neighbours").out()).contains("Aldwick Vale Brigade: delivery-75");
            Ran own = run(vale, "vale", "import", file.toString(), "--keep", "--who", "T. Marsh");
            assertThat(own.err()).contains("our own");
            assertThat(folder.resolve("vale").resolve(KeyFile.NAME)).exists();
            try (Store store = Store.open(falls)) {
                assertThat(store.history().audit().holds()).isTrue();
                assertThat(store.kits().latestVersion()).isEqualTo(1);
            }
        }
    }

    private Ran run(String database, String name, String... command) {
        List<String> where =
                List.of("--store", database, "--data", folder.resolve(name).toString());
        return Ran.of(Stream.of(List.of("exchange"), List.of(command), where)
                .flatMap(List::stream)
                .toArray(String[]::new));
    }

    /** A company with its kit and a signed order, in a database of its own. */
    private String company(EmbeddedPostgres postgres, String name, String example) throws IOException, SQLException {
        try (var connection = postgres.getPostgresDatabase().getConnection();
                var statement = connection.createStatement()) {
            statement.execute("create database " + name);
        }
        Files.createDirectory(folder.resolve(name));
        String address = postgres.getJdbcUrl("postgres", name);
        String text = Files.readString(Path.of(System.getProperty("hosewright.root"), "examples", example));
        Kit kit = KitDocument.of(text, example).kit();
        try (Store store = Store.open(address)) {
            store.kits().save(text, 0, ACT);
            var way = Rounding.Way.NEAREST;
            var cards = CardAnalysis.of(kit, Revision.of(kit), LocalDate.of(2026, 6, 1), way);
            String order = OrderText.write(OrderSet.of(cards, way));
            store.orders().propose(OrderText.code(order), 1, order, ACT);
            store.orders().step(new Orders.Step(1, OrderStep.Kind.SIGNED, "", ""), 1, ACT);
        }
        return address;
    }
}
