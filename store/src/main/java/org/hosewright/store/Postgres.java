package org.hosewright.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.util.DriverDataSource;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.List;
import java.util.Properties;
import javax.sql.DataSource;
import org.hosewright.ledger.storage.StorageFailure;

/** A store in a PostgreSQL database, which several servers may share. */
final class Postgres implements Database {
    private final Pools pools;

    private Postgres(Pools pools) {
        this.pools = pools;
    }

    /** Opens the database.
     *
     * @throws StorageFailure it does not answer, or was written by a later version
     */
    static Postgres open(String jdbcUrl) {
        String where = jdbcUrl.replaceFirst("\\?.*", "");
        try {
            DataSource source = new DriverDataSource(jdbcUrl, null, new Properties(), null, null);
            Schema.bring(source, where);
            HikariConfig writing = pool(source, "set synchronous_commit = on; set lock_timeout = " + Pools.PATIENCE_MS);
            HikariConfig reading = pool(source, "set default_transaction_read_only = on");
            reading.setTransactionIsolation("TRANSACTION_REPEATABLE_READ");
            return new Postgres(Pools.of(writing, reading, where));
        } catch (RuntimeException e) {
            throw Failures.wrap(e, where);
        }
    }

    @Override
    public Pools pools() {
        return pools;
    }

    @Override
    public void backup(Path target) {
        BackupFile.write(target, part -> {
            DataSource fresh = Sqlite.source(part, Sqlite.config());
            Schema.bring(fresh, part.toString());
            try (Connection from = pools.reader().getConnection();
                    Connection into = fresh.getConnection()) {
                from.setAutoCommit(false);
                into.setAutoCommit(false);
                TableCopy.of(from, into);
                into.commit();
                from.rollback();
            }
        });
    }

    @Override
    public List<String> listDamage() {
        return List.of();
    }

    @Override
    public void close() {
        pools.close();
    }

    private static HikariConfig pool(DataSource source, String atStart) {
        var pool = new HikariConfig();
        pool.setDataSource(source);
        pool.setConnectionInitSql(atStart);
        return pool;
    }
}
