package org.hosewright.cli.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.hosewright.cli.record.DataFolder;
import org.hosewright.files.exchange.KeyFile;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.server.setup.Ports;
import org.hosewright.store.Store;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where the record lies that a command works on. */
final class RecordPlace {
    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "Folder of the record. Else HOSEWRIGHT_DATA, else .local/share/hosewright in your home.")
    private @Nullable Path data;

    RecordPlace() {}

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
                store.kits(), store.drills(), store.orders(), store.leaves(), store.history(), new KeyFile(folder));
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
