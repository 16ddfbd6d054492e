package org.hosewright.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import org.hosewright.files.exchange.KeyFile;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.kit.Revision;
import org.hosewright.files.order.OrderText;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.ledger.card.CardAnalysis;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.order.OrderSet;
import org.hosewright.ledger.order.OrderStep;
import org.hosewright.ledger.order.Orders;
import org.hosewright.store.Store;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExchangeTest {
    private static final Act ACT = new Act("T. Marsh", "test");

    @TempDir
    private Path folder;

    private Path vale;
    private Path falls;
    private Path file;

    @BeforeEach
    void twoCompanies() throws IOException {
        vale = company("vale", "vale.kit.yaml");
        falls = company("falls", "brindle-falls.kit.yaml");
        file = folder.resolve("for-falls.exchange");
    }

    @Test
    @Tag("long")
    void aPackageGoesFromOneCompanyToTheOtherAndTouchesNothingOfOursHolds() {
        assertThat(export(vale, file).status()).isZero();
        long kit = kitVersion(falls);
        Ran looked = Ran.of("exchange", "import", file.toString(), "--data", falls.toString());
        assertThat(looked.out())
                .contains("Aldwick Vale Brigade: delivery-75", "their figures, not ours", "Nothing is kept yet")
                .contains("gpm (", "psi (", "kPa)", "L/min)");
        Ran unsure = keep(falls, file);
        assertThat(unsure.status()).isEqualTo(Exit.REFUSED.status());
        assertThat(unsure.err()).contains("by telephone");
        Ran wrong = keep(falls, file, "--fingerprint", "0".repeat(32));
        assertThat(wrong.err()).contains("not theirs and nothing was taken in");
        assertThat(neighbours(falls)).contains("No neighbour");
        Ran kept = keep(falls, file, "--fingerprint", fingerprint(vale));
        assertThat(kept.err()).isEmpty();
        assertThat(kept.out()).contains("Kept, as theirs.");
        assertThat(neighbours(falls)).contains("Aldwick Vale Brigade: delivery-75", "Kept as aldwick-vale-brigade-");
        assertThat(kitVersion(falls)).isEqualTo(kit);
    }

    @Test
    @Tag("long")
    void anOlderFileIsRefused() {
        export(vale, file);
        Path later = folder.resolve("later.exchange");
        export(vale, later);
        keep(falls, later, "--fingerprint", fingerprint(vale));
        Ran older = keep(falls, file);
        assertThat(older.status()).isEqualTo(Exit.REFUSED.status());
        assertThat(older.err()).contains("OLDER");
        takeOut();
        assertThat(keep(falls, file, "--fingerprint", fingerprint(vale)).err()).contains("OLDER");
        assertThat(keep(falls, later).err()).contains("by telephone");
        assertThat(keep(falls, later, "--fingerprint", fingerprint(vale)).status())
                .isZero();
    }

    @Test
    @Tag("long")
    void aChangedKeyIsRefused() throws IOException {
        export(vale, file);
        keep(falls, file, "--fingerprint", fingerprint(vale));
        Files.delete(vale.resolve(KeyFile.NAME));
        Path forged = folder.resolve("forged.exchange");
        Ran other = export(vale, forged);
        assertThat(other.err()).contains("another than the one of the last file", "--new-key");
        export(vale, forged, "--new-key");
        Ran ran = keep(falls, forged, "--fingerprint", fingerprint(vale));
        assertThat(ran.status()).isEqualTo(Exit.REFUSED.status());
        assertThat(ran.err()).contains("THE KEY HAS CHANGED");
    }

    @Test
    @Tag("long")
    void aWithdrawalIsSaidAndNoFigureStandsHolds() {
        export(vale, file);
        keep(falls, file, "--fingerprint", fingerprint(vale));
        Path back = folder.resolve("back.exchange");
        Ran withdrawn = Ran.of(
                "exchange",
                "export",
                "--withdraw",
                "--data",
                vale.toString(),
                "--out",
                back.toString(),
                "--who",
                "T. Marsh",
                "--why",
                "The nozzles were changed.");
        assertThat(withdrawn.err()).isEmpty();
        assertThat(keep(falls, back).out()).contains("WITHDRAWN by Aldwick Vale Brigade", "The nozzles were changed.");
        assertThat(neighbours(falls)).contains("WITHDRAWN").doesNotContain("kPa");
    }

    @Test
    @Tag("long")
    void theKeyIsInNoBackupHolds() throws IOException {
        export(vale, file);
        Path backup = folder.resolve("backup.sqlite");
        assertThat(Ran.of("backup", backup.toString(), "--data", vale.toString())
                        .status())
                .isZero();
        String secret =
                Files.readString(vale.resolve(KeyFile.NAME)).lines().toList().get(1);
        String kept = Files.readString(backup, StandardCharsets.ISO_8859_1);
        assertThat(kept).contains("hosewright exchange 1").doesNotContain(secret);
    }

    @Test
    void ourOwnFileIsRefused() {
        export(vale, file);
        assertThat(keep(vale, file).err()).contains("our own");
    }

    private static Ran export(Path from, Path file, String... more) {
        String[] arguments = {
            "exchange", "export", "--data", from.toString(), "--out", file.toString(), "--who", "T. Marsh"
        };
        return run(arguments, more);
    }

    private static Ran run(String[] arguments, String... more) {
        String[] all = Arrays.copyOf(arguments, arguments.length + more.length);
        System.arraycopy(more, 0, all, arguments.length, more.length);
        return Ran.of(all);
    }

    private static Ran keep(Path into, Path file, String... more) {
        String[] arguments = {
            "exchange", "import", file.toString(), "--data", into.toString(), "--keep", "--who", "R. Vane"
        };
        return run(arguments, more);
    }

    private static String neighbours(Path at) {
        return Ran.of("exchange", "neighbours", "--data", at.toString()).out();
    }

    private void takeOut() {
        String id;
        try (var store = Store.open(falls)) {
            id = store.leaves().list(LeafKind.NEIGHBOUR).get(0).id();
        }
        Ran ran = Ran.of("exchange", "neighbours", "--data", falls.toString(), "--take-out", id, "--who", "R. Vane");
        assertThat(ran.out()).contains("No neighbour");
    }

    private static String fingerprint(Path of) {
        return Ran.of("exchange", "key", "--data", of.toString())
                .out()
                .lines()
                .toList()
                .get(1);
    }

    private static long kitVersion(Path of) {
        try (var store = Store.open(of)) {
            return store.kits().latestVersion();
        }
    }

    /** A company with its kit and a signed order. */
    private Path company(String name, String example) throws IOException {
        Path made = Files.createDirectory(folder.resolve(name));
        Path kitFile = Path.of(System.getProperty("hosewright.root"), "examples", example);
        String text = Files.readString(kitFile);
        Kit kit = KitDocument.of(text, example).kit();
        try (var store = Store.open(made)) {
            store.kits().save(text, 0, ACT);
            var way = Rounding.Way.NEAREST;
            var cards = CardAnalysis.of(kit, Revision.of(kit), LocalDate.of(2026, 6, 1), way);
            String order = OrderText.write(OrderSet.of(cards, way));
            store.orders().propose(OrderText.code(order), 1, order, ACT);
            store.orders().step(new Orders.Step(1, OrderStep.Kind.SIGNED, "", ""), 1, ACT);
        }
        return made;
    }
}
