package org.hosewright.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.SQLException;
import java.util.UUID;

/** The tests' own PostgreSQL server, started once; it and its data end with the tests. */
final class PostgresServer {
    private static final PostgresServer ONLY = start();

    private final EmbeddedPostgres server;

    private PostgresServer(EmbeddedPostgres server) {
        this.server = server;
    }

    static PostgresServer get() {
        return ONLY;
    }

    private static PostgresServer start() {
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
}
