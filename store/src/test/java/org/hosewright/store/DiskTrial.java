package org.hosewright.store;

import java.nio.file.Files;
import java.nio.file.Path;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.storage.StorageFailure;

/** A process that fills the disk under its store, makes room and goes on; it says how each step went. */
final class DiskTrial {
    private static final Act ACT = new Act("Chief", "");
    private static final int BALLAST = 600_000;

    private DiskTrial() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        try {
            Path ballast = Files.write(folder.resolve("ballast"), new byte[BALLAST]);
            try (Store store = Store.open(folder)) {
                fill(store, ballast);
            }
        } catch (java.nio.file.FileSystemException readOnly) {
            tryReadOnly(folder);
        }
    }

    private static void tryReadOnly(Path folder) {
        try (Store store = Store.open(folder)) {
            System.out.println("opened " + store.where());
        } catch (StorageFailure e) {
            System.out.println("refused " + e.kind() + " " + e.getMessage());
        }
    }

    private static void fill(Store store, Path ballast) throws Exception {
        long kept = 0;
        try {
            while (kept < 10_000) {
                store.kits().save(text(kept), kept, ACT);
                kept++;
            }
        } catch (StorageFailure e) {
            System.out.println("full " + e.kind() + " " + e.getMessage());
        }
        boolean complete = store.kits().findLatest().orElseThrow().version() == kept;
        for (long version = 1; version <= kept; version++) {
            complete &= store.kits().findRevision(version).orElseThrow().text().equals(text(version - 1));
        }
        System.out.println(complete ? "sound and complete " + store.check() : "incomplete");
        Files.delete(ballast);
        store.kits().save("next", kept, ACT);
        if (store.check().isEmpty()
                && store.kits().findLatest().orElseThrow().text().equals("next")) {
            System.out.println("went on after room was made");
        }
    }

    private static String text(long number) {
        return ("# line " + number + "\n").repeat(2000);
    }
}
