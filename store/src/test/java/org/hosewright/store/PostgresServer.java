package org.hosewright.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.SQLException;
import java.util.UUID;

/** A PostgreSQL server for one test class, its data gone with it. */
final class PostgresServer implements AutoCloseable {
    private final EmbeddedPostgres server;

    private PostgresServer(EmbeddedPostgres server) {
        this.server = server;
    }

    /** Starts the server.
     *
     * @throws AssertionError it cannot start on this machine
     */
    static PostgresServer start() {
        try {
            return new PostgresServer(EmbeddedPostgres.builder()
                    .setServerConfig("fsync", "off")
                    .setServerConfig("max_connections", "60")
                    .start());
        } catch (IOException | RuntimeException e) {
            throw new AssertionError(
                    "The tests' own PostgreSQL cannot start on this machine (" + e.getMessage()
                            + "). Run the tests as a user other than root, or where 'unshare -U true' works.",
                    e);
        }
    }

    /** Makes an empty database.
     *
     * @return its address, user included
     */
    String freshDatabase() {
        String name = "store_" + UUID.randomUUID().toString().replace("-", "");
        try (var connection = server.getPostgresDatabase().getConnection();
                var statement = connection.createStatement()) {
            statement.execute("create database " + name);
        } catch (SQLException e) {
            throw new AssertionError(e);
        }
        return server.getJdbcUrl("postgres", name);
    }

    int port() {
        return server.getPort();
    }

    @Override
    public void close() {
        try {
            server.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
