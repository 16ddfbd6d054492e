package org.hosewright.store;

import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationInfo;
import org.hosewright.ledger.storage.StorageFailure.Kind;

/** The tables of the store, brought to today's form by numbered migrations that are never edited. */
final class Schema {
    private static final String LOCATION = "classpath:store-migrations";

    private Schema() {}

    /** Brings a database to today's form.
     *
     * @throws org.hosewright.ledger.storage.StorageFailure a later version wrote it, or its migrations were edited
     */
    static void bring(DataSource source, String where) {
        Flyway flyway = Flyway.configure()
                .dataSource(source)
                .locations(LOCATION)
                .failOnMissingLocations(true)
                .load();
        for (MigrationInfo migration : flyway.info().applied()) {
            if (!migration.getState().isResolved()) {
                throw Failures.of(
                        Kind.NEWER, where, null, new FlywayException("its form is " + migration.getVersion()));
            }
        }
        flyway.migrate();
    }
}
