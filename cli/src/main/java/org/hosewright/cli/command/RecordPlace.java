package org.hosewright.cli.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.hosewright.cli.record.DataFolder;
import org.hosewright.files.exchange.KeyFile;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.server.setup.Ports;
import org.hosewright.store.Store;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** Where the record lies that a command works on. */
final class RecordPlace {
    @Option(
            names = "--data",
            scope = ScopeType.INHERIT,
            paramLabel = "DIR",
            description = "Folder of the record. Else HOSEWRIGHT_DATA, else .local/share/hosewright in your home.")
    private @Nullable Path data;

    @Option(
            names = "--store",
            scope = ScopeType.INHERIT,
            paramLabel = "URL",
            defaultValue = "${env:HOSEWRIGHT_STORE}",
            description = "PostgreSQL database that keeps the record instead of the folder, as in"
                    + " jdbc:postgresql://host/database?user=name&password=secret. Else HOSEWRIGHT_STORE.")
    private @Nullable String address;

    RecordPlace() {}

    /** The database that keeps the record instead of the folder, where one was named.
     *
     * @throws InvalidInput it is not one of PostgreSQL; what may hold a password is not in the message
     */
    Optional<String> database() {
        Optional<String> named = Optional.ofNullable(address).filter(text -> !text.isBlank());
        if (named.isPresent() && !named.get().startsWith("jdbc:postgresql:")) {
            throw new InvalidInput("--store", "another address", "one that begins with jdbc:postgresql:", "");
        }
        return named;
    }

    /** Refuses a database, for what works on folders alone.
     *
     * @throws InvalidInput one was named
     */
    void requireFolder() {
        if (database().isPresent()) {
            throw new InvalidInput("--store", "a database", "a folder (--data) for this command", "");
        }
    }

    /** Opens the record, made new where there is none. */
    Store open(boolean demo, Clock clock) {
        return database().map(url -> Store.open(url, clock)).orElseGet(() -> Store.open(folder(demo), clock));
    }

    /** Opens a record that is there. */
    Store openExisting(Clock clock) {
        return database().map(url -> Store.open(url, clock)).orElseGet(() -> Store.open(existing(), clock));
    }

    Path folder() {
        return folder(false);
    }

    /** The folder to use.
     *
     * @param demo true for the invented company, which never shares a folder with a real one by default
     */
    Path folder(boolean demo) {
        return new DataFolder(System.getenv()).of(Optional.ofNullable(data), demo);
    }

    /** The record of a store, with the key that lies in a folder. */
    static Ports ports(Store store, Path folder) {
        return new Ports(
                store.kits(),
                store.drills(),
                store.orders(),
                store.leaves(),
                store.people(),
                store.history(),
                new KeyFile(folder));
    }

    /** The folder, where a record lies in it.
     *
     * @throws InvalidInput none does
     */
    Path existing() {
        Path folder = folder();
        if (!Files.exists(folder.resolve("store.sqlite"))) {
            throw new InvalidInput("folder of the record", folder.toString(), "a folder with a record in it", "");
        }
        return folder;
    }
}
