package org.hosewright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Audit;
import org.hosewright.ledger.storage.StorageFailure;
import org.hosewright.ledger.storage.StorageFailure.Kind;

/** Backups looked at and taken back: always on a copy first, so that the backup itself stays as it is. */
final class Restoring {
    private Restoring() {}

    /** Makes a store from a backup, in a folder that has none.
     *
     * @throws InvalidInput the folder has a store already, or the file is not there
     * @throws StorageFailure the backup is damaged, or its chain is broken; the folder is left without a store
     */
    static Audit restore(Path backup, Path folder) {
        if (!Files.isRegularFile(backup)) {
            throw new InvalidInput("backup", backup.toString(), "a file that backup made", "");
        }
        if (Files.exists(Sqlite.file(folder))) {
            throw new InvalidInput(
                    "folder to restore into", folder.toString(), "a folder without a record: none is replaced", "");
        }
        Audit audit = inFolderOfItsOwn(copy -> Files.copy(backup, copy), store -> sound(store, backup));
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw Failures.ofFile(e, folder.toString());
        }
        BackupFile.write(Sqlite.file(folder), part -> Files.copy(backup, part));
        return audit;
    }

    /** Proves the chain of a store that may be in use. */
    static Audit audit(Path folder) {
        return inFolderOfItsOwn(
                copy -> Sqlite.backup(Sqlite.file(folder), copy),
                store -> store.history().audit());
    }

    private static <T> T inFolderOfItsOwn(Copying copying, Function<Store, T> look) {
        try {
            Path folder = Files.createTempDirectory("hosewright-copy");
            try {
                copying.to(Sqlite.file(folder));
                try (Store store = Store.open(folder)) {
                    return look.apply(store);
                }
            } finally {
                remove(folder);
            }
        } catch (IOException e) {
            throw Failures.ofFile(e, "the folder for temporary files");
        }
    }

    private static Audit sound(Store store, Path backup) {
        List<String> found = store.check();
        if (!found.isEmpty()) {
            throw new StorageFailure(
                    Kind.DAMAGED,
                    "The backup is not sound: " + String.join("; ", found) + ".",
                    "Nothing was restored; try an older backup.",
                    backup.toString(),
                    null);
        }
        return store.history().audit();
    }

    private static void remove(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }

    /** What fills the copy. */
    private interface Copying {
        void to(Path copy) throws IOException;
    }
}
