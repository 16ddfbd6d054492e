package org.hosewright.store;

import java.nio.file.Path;
import java.util.List;

/** One of the two databases a store can stand in: what differs between them. */
sealed interface Database extends AutoCloseable permits Sqlite, Postgres {
    Pools pools();

    /** Writes the whole store, as of one moment, into a new SQLite file. */
    void backup(Path file);

    /** What the database itself finds wrong with its files; empty where it finds nothing. */
    List<String> listDamage();

    @Override
    void close();
}
