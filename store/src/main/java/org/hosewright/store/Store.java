package org.hosewright.store;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.hosewright.ledger.drill.Drills;
import org.hosewright.ledger.history.Audit;
import org.hosewright.ledger.history.History;
import org.hosewright.ledger.kit.Kits;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.order.Orders;
import org.hosewright.ledger.person.People;

/** The company's whole record in one place, behind the ports of the ledger. Safe for many threads at once. */
public final class Store implements AutoCloseable {
    private final Database database;
    private final Transactions transactions;

    private Store(Database database, Clock clock) {
        this.database = database;
        this.transactions = new Transactions(database.pools(), clock);
    }

    /** Opens the store in a folder, made new where there is none. One process may have it open at a time.
     *
     * @throws org.hosewright.ledger.storage.StorageFailure it cannot be opened; what is there was left as it is
     */
    public static Store open(Path folder) {
        return open(folder, Clock.systemUTC());
    }

    /** As {@link #open(Path)}, with the clock that dates the acts. */
    public static Store open(Path folder, Clock clock) {
        return new Store(Sqlite.open(folder), clock);
    }

    /** Opens the store in a PostgreSQL database, its tables made where there are none. Servers may share it.
     *
     * @param jdbcUrl as in "jdbc:postgresql://host/database?user=name&amp;password=secret"
     * @throws org.hosewright.ledger.storage.StorageFailure it cannot be opened; what is there was left as it is
     */
    public static Store open(String jdbcUrl) {
        return open(jdbcUrl, Clock.systemUTC());
    }

    /** As {@link #open(String)}, with the clock that dates the acts. */
    public static Store open(String jdbcUrl, Clock clock) {
        return new Store(Postgres.open(jdbcUrl), clock);
    }

    /** Backs up the store in a folder that another process may have open and be writing to.
     *
     * @param file the SQLite file to make; must not exist
     */
    public static void backup(Path folder, Path file) {
        Sqlite.backup(Sqlite.file(folder), file);
    }

    /** Makes a store from a backup, in a folder that has none; the backup is checked, its chain proved, first.
     *
     * @return what proving the chain found
     */
    public static Audit restore(Path backup, Path folder) {
        return Restoring.restore(backup, folder);
    }

    /** Proves the chain of the store in a folder that another process may have open, on a copy. */
    public static Audit audit(Path folder) {
        return Restoring.audit(folder);
    }

    public Kits kits() {
        return new StoredKits(transactions);
    }

    public Drills drills() {
        return new StoredDrills(transactions);
    }

    public Orders orders() {
        return new StoredOrders(transactions);
    }

    public Leaves leaves() {
        return new StoredLeaves(transactions);
    }

    public People people() {
        return new StoredPeople(transactions);
    }

    public History history() {
        return new StoredHistory(transactions);
    }

    /** Folder or address, without a password. */
    public String where() {
        return transactions.where();
    }

    /** Writes everything, as of one moment and while others go on writing, into a new SQLite file, which opens as a
     * store when it lies in a folder of its own under the name store.sqlite.
     *
     * @param file must not exist
     */
    public void backup(Path file) {
        database.backup(file);
    }

    /** What does not hold together, a sentence part each; empty where the store is sound. */
    public List<String> check() {
        var found = new ArrayList<>(database.listDamage());
        found.addAll(transactions.read(Soundness::listBroken));
        history()
                .audit()
                .broken()
                .ifPresent(broken -> found.add("history entry " + broken.entry() + ": " + broken.why()));
        return found;
    }

    @Override
    public void close() {
        database.close();
    }
}
