package org.hosewright.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;

/** The connections to one database: a single one that writes, a few that read. */
record Pools(HikariDataSource writer, HikariDataSource reader, String where) implements AutoCloseable {
    private static final int READERS = 4;

    /** How long an act waits for its turn [ms]. */
    static final int PATIENCE_MS = 5_000;

    /** Opens both; each configuration carries what its database needs. */
    static Pools of(HikariConfig writing, HikariConfig reading, String where) {
        var writer = new HikariDataSource(bounded(writing, 1, "store-writer"));
        try {
            return new Pools(writer, new HikariDataSource(bounded(reading, READERS, "store-reader")), where);
        } catch (RuntimeException e) {
            writer.close();
            throw e;
        }
    }

    private static HikariConfig bounded(HikariConfig config, int most, String name) {
        config.setPoolName(name);
        config.setMaximumPoolSize(most);
        config.setMinimumIdle(1);
        config.setConnectionTimeout(PATIENCE_MS);
        return config;
    }

    @Override
    public void close() {
        reader.close();
        writer.close();
    }
}
