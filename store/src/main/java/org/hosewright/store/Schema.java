package org.hosewright.store;

import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.CoreErrorCode;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationInfo;
import org.hosewright.ledger.storage.StorageFailure;
import org.hosewright.ledger.storage.StorageFailure.Kind;
import org.jspecify.annotations.Nullable;

/** The tables of the store, brought to today's form by numbered migrations that are never edited. */
final class Schema {
    /** Number of the last migration. */
    static final int TODAY = 5;

    private static final String LOCATION = "classpath:store-migrations";

    private Schema() {}

    /** Brings a database to today's form.
     *
     * @throws StorageFailure a later version wrote it, its migrations were edited, or it holds something else
     */
    static void bring(DataSource source, String where) {
        if (!isOfToday(source)) {
            migrate(source, where);
        }
    }

    /** Compares every migration with what was applied, and applies those that are missing. */
    static void migrate(DataSource source, String where) {
        Flyway flyway = flyway(source);
        for (MigrationInfo migration : flyway.info().applied()) {
            if (!migration.getState().isResolved()) {
                var form = new FlywayException("its form is " + migration.getVersion() + ", known here is " + TODAY);
                throw Failures.of(Kind.NEWER, where, null, form);
            }
        }
        try {
            flyway.migrate();
        } catch (FlywayException e) {
            if (e.getErrorCode() == CoreErrorCode.NON_EMPTY_SCHEMA_WITHOUT_SCHEMA_HISTORY_TABLE) {
                throw foreign(where, e);
            }
            throw e;
        }
    }

    /** The failure to raise where a database is someone else's. */
    static StorageFailure foreign(String where, @Nullable Throwable cause) {
        return new StorageFailure(
                Kind.OTHER,
                "There is a database here that is not a Hosewright store.",
                "Choose another place; nothing was changed.",
                where,
                cause);
    }

    static Flyway flyway(DataSource source) {
        return Flyway.configure()
                .dataSource(source)
                .locations(LOCATION)
                .javaMigrations(new LinkOldEntries())
                .failOnMissingLocations(true)
                .load();
    }

    /* The migration tool takes a third of a second to look; a store that needs nothing opens without it. */
    private static boolean isOfToday(DataSource source) {
        String query = "select count(*), sum(case when success then 1 else 0 end)"
                + " from flyway_schema_history where version is not null";
        try (Connection connection = source.getConnection();
                var statement = connection.createStatement();
                var answer = statement.executeQuery(query)) {
            return answer.next() && answer.getInt(1) == TODAY && answer.getInt(2) == TODAY;
        } catch (SQLException e) {
            return false;
        }
    }
}
