package org.hosewright.store;

import java.util.List;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.migration.Context;
import org.flywaydb.core.api.migration.JavaMigration;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jspecify.annotations.Nullable;

/** The third migration: entries written before the history was a chain get their links, in order. */
final class LinkOldEntries implements JavaMigration {
    /** Where acts wrote before there was a chain. */
    private static final List<String> TABLES =
            List.of("kit_revision", "drill_head", "drill_row_revision", "ruling", "acceptance");

    @Override
    public MigrationVersion getVersion() {
        return MigrationVersion.fromVersion("3");
    }

    @Override
    public String getDescription() {
        return "link old entries";
    }

    @Override
    public @Nullable Integer getChecksum() {
        return null;
    }

    @Override
    public boolean canExecuteInTransaction() {
        return true;
    }

    @Override
    public void migrate(Context context) {
        // The connection is the migration tool's own; closing the handle would end its transaction.
        Handle handle = Jdbi.create(context.getConnection()).open();
        long last = handle.createQuery("select last from history_head")
                .mapTo(Long.class)
                .one();
        for (long entry = 1; entry <= last; entry++) {
            Chain.close(handle, entry, TABLES);
        }
    }
}
