package org.hosewright.store;

import com.zaxxer.hikari.HikariConfig;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.storage.StorageFailure;
import org.hosewright.ledger.storage.StorageFailure.Kind;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.JournalMode;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteConfig.TransactionMode;
import org.sqlite.SQLiteDataSource;

/** A store in one folder, as a SQLite file with a write-ahead log, each commit flushed to the disk. */
final class Sqlite implements Database {
    private static final String NAME = "store.sqlite";

    private final Path file;
    private final FolderLock lock;
    private final Pools pools;

    private Sqlite(Path file, FolderLock lock, Pools pools) {
        this.file = file;
        this.lock = lock;
        this.pools = pools;
    }

    /** Opens the store in a folder, made new where there is none.
     *
     * @throws StorageFailure it is in use, damaged, written by a later version, or cannot be written
     */
    static Sqlite open(Path folder) {
        FolderLock lock = FolderLock.of(folder);
        Path file = file(folder);
        try {
            return new Sqlite(file, lock, pools(file));
        } catch (RuntimeException | SQLException e) {
            lock.close();
            throw Failures.wrap(e, folder.toString());
        }
    }

    static Path file(Path folder) {
        return folder.resolve(NAME);
    }

    @Override
    public Pools pools() {
        return pools;
    }

    @Override
    public void backup(Path target) {
        backup(file, target);
    }

    /** Copies a store file that may be in use, by this process or another. */
    static void backup(Path file, Path target) {
        if (!Files.exists(file)) {
            throw new InvalidInput("store", file.toString(), "a folder that holds a store", "");
        }
        BackupFile.write(target, part -> {
            try (Connection connection = source(file, config()).getConnection();
                    var vacuum = connection.prepareStatement("vacuum into ?")) {
                vacuum.setString(1, part.toString());
                vacuum.execute();
            }
        });
    }

    @Override
    public List<String> listDamage() {
        return damage(source(file, config()), "pragma integrity_check");
    }

    /** What a check of the file finds, line by line; empty where it is sound. */
    static List<String> damage(DataSource source, String check) {
        var found = new ArrayList<String>();
        try (Connection connection = source.getConnection();
                var statement = connection.createStatement();
                var lines = statement.executeQuery(check)) {
            while (lines.next()) {
                found.add(lines.getString(1));
            }
        } catch (SQLException e) {
            found.add(String.valueOf(e.getMessage()));
        }
        found.remove("ok");
        return found;
    }

    @Override
    public void close() {
        pools.close();
        lock.close();
    }

    private static Pools pools(Path file) throws SQLException {
        if (Files.exists(file)) {
            inspect(file);
        }
        SQLiteConfig writing = config();
        writing.setTransactionMode(TransactionMode.IMMEDIATE);
        DataSource writer = source(file, writing);
        Schema.bring(writer, file.toString());
        HikariConfig reading = pool(source(file, config()));
        reading.setConnectionInitSql("pragma query_only = on");
        return Pools.of(pool(writer), reading, file.toString());
    }

    static SQLiteConfig config() {
        var config = new SQLiteConfig();
        config.setJournalMode(JournalMode.WAL);
        config.setSynchronous(SynchronousMode.FULL);
        config.setBusyTimeout(Pools.PATIENCE_MS);
        config.enforceForeignKeys(true);
        return config;
    }

    static DataSource source(Path file, SQLiteConfig config) {
        var source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        return source;
    }

    private static HikariConfig pool(DataSource source) {
        var pool = new HikariConfig();
        pool.setDataSource(source);
        pool.setMaxLifetime(0);
        pool.setIdleTimeout(0);
        return pool;
    }

    /* Looks without setting anything: what is damaged or someone else's stays as it is, byte for byte. */
    private static void inspect(Path file) throws SQLException {
        var plain = new SQLiteConfig();
        plain.setBusyTimeout(Pools.PATIENCE_MS);
        try (Connection connection = source(file, plain).getConnection();
                var statement = connection.createStatement()) {
            String check = text(statement, "pragma quick_check(1)");
            if (!"ok".equals(check)) {
                throw Failures.of(Kind.DAMAGED, file.toString(), null, new SQLException(check));
            }
            String tables = "select count(*) || '/' || count(case when name = 'flyway_schema_history' then 1 end)"
                    + " from sqlite_master where type = 'table'";
            String found = text(statement, tables);
            if (!found.equals("0/0") && found.endsWith("/0")) {
                throw Schema.foreign(file.toString(), null);
            }
        }
    }

    private static String text(Statement statement, String query) throws SQLException {
        try (var answer = statement.executeQuery(query)) {
            return answer.next() ? answer.getString(1) : "";
        }
    }
}
