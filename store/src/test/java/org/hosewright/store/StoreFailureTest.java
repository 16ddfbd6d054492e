package org.hosewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.Random;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.storage.StorageFailure;
import org.hosewright.ledger.storage.StorageFailure.Kind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person is told when the store cannot do its work, and that it is left as it was. */
final class StoreFailureTest {
    private static final Act ACT = new Act("Chief", "");

    /** A mount namespace of its own, in which a small or read-only disk can be had without any right. */
    private static final List<String> OWN_DISK = List.of("unshare", "--map-root-user", "--mount", "sh", "-c");

    @TempDir
    Path folder;

    private Path data;
    private Path file;

    @BeforeEach
    void fill() {
        data = folder.resolve("data");
        file = data.resolve("store.sqlite");
        try (Store store = Store.open(data)) {
            for (int i = 0; i < 40; i++) {
                store.kits().save("# kit " + i + "\n".repeat(4000), i, ACT);
            }
        }
    }

    @Test
    void damagedHeadIsRefusedAndLeftHolds() throws Exception {
        overwrite(0, "not a database at all".getBytes(java.nio.charset.StandardCharsets.UTF_8));
        assertRefusedAndLeft(Kind.DAMAGED, "The store is damaged");
    }

    @Test
    void damagedPagesAreRefusedAndLeftHolds() throws Exception {
        var random = new Random(7);
        var noise = new byte[3 * 4096];
        random.nextBytes(noise);
        overwrite(4096, noise);
        assertRefusedAndLeft(Kind.DAMAGED, "put back the last backup");
    }

    @Test
    void truncatedFileIsRefusedAndLeftHolds() throws Exception {
        try (var raw = new RandomAccessFile(file.toFile(), "rw")) {
            raw.setLength(raw.length() / 2);
        }
        assertRefusedAndLeft(Kind.DAMAGED, "The store is damaged");
    }

    @Test
    void laterVersionIsRefusedAndLeftHolds() throws Exception {
        sql("insert into flyway_schema_history (installed_rank, version, description, type, script, checksum,"
                + " installed_by, execution_time, success)"
                + " values (999, '999', 'later', 'SQL', 'V999__later.sql', 1, '', 1, 1)");
        assertRefusedAndLeft(Kind.NEWER, "written by a later version of Hosewright (its form is 999");
    }

    @Test
    void anotherProgramsDatabaseIsRefusedAndLeftHolds() throws Exception {
        Files.delete(file);
        sql("create table birds (name text)");
        assertRefusedAndLeft(Kind.OTHER, "There is a database here that is not a Hosewright store.");
    }

    @Test
    void secondStoreInTheSameProcessIsRefusedHolds() {
        try (Store first = Store.open(data)) {
            assertRefused(
                    Kind.IN_USE,
                    "Another Hosewright (process " + ProcessHandle.current().pid() + ") has this");
            assertThat(first.kits().findLatest()).isPresent();
        }
        Store.open(data).close();
    }

    @Test
    void secondProcessIsRefusedHolds() throws Exception {
        Path other = folder.resolve("other");
        try (Child holder = Child.start(List.of(), BusyWriter.class, folder, other.toString(), "1")) {
            holder.awaitLine("open");
            assertThatThrownBy(() -> Store.open(other))
                    .isInstanceOf(StorageFailure.class)
                    .hasMessageContaining("Another Hosewright (process " + holder.pid() + ") has this store open.")
                    .hasMessageContaining("start this one with another data folder");
            Store.backup(other, folder.resolve("while-running.sqlite"));
            holder.kill();
        }
        Store.open(other).close();
    }

    @Test
    void anotherProgramHoldingTheFileIsToldHolds() throws Exception {
        try (Store store = Store.open(data);
                var other = DriverManager.getConnection("jdbc:sqlite:" + file);
                var statement = other.createStatement()) {
            statement.execute("begin immediate");
            var failure = catchThrowableOfType(
                    StorageFailure.class, () -> store.kits().save("x", 40, ACT));
            assertThat(failure.kind()).isEqualTo(Kind.IN_USE);
            assertThat(failure).hasMessageContaining("Another program keeps the store busy");
            statement.execute("rollback");
            assertThat(store.kits().save("x", 40, ACT)).isNotNull();
        }
    }

    @Test
    void folderThatCannotBeMadeIsToldHolds() {
        var failure = catchThrowableOfType(StorageFailure.class, () -> Store.open(Path.of("/proc/hosewright")));
        assertThat(failure).hasMessageStartingWith("/proc/hosewright: ");
    }

    @Test
    void backupOfNothingMakesNothingHolds() {
        Path target = folder.resolve("backup.sqlite");
        assertThatThrownBy(() -> Store.backup(folder.resolve("empty"), target))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("a folder that holds a store");
        assertThatThrownBy(() ->
                        Store.backup(data, folder.resolve("no such folder").resolve("backup.sqlite")))
                .isInstanceOf(StorageFailure.class);
        assertThat(folder)
                .isDirectoryNotContaining(path -> path.getFileName().toString().contains("backup"));
        assertThat(folder.resolve("empty")).doesNotExist();
    }

    @Test
    void readOnlyFolderIsToldAndLeftHolds() throws Exception {
        byte[] before = Files.readAllBytes(file);
        String mount = "mount -o bind \"$0\" \"$0\" && mount -o remount,ro,bind \"$0\" && exec \"$@\"";
        assertThat(onOwnDisk(mount, data)).contains("refused READ_ONLY " + data + ": The store cannot be written here");
        assertThat(file).hasBinaryContent(before);
    }

    @Test
    void fullDiskIsToldAndNothingIsLostHolds() throws Exception {
        Path small = Files.createDirectory(folder.resolve("small"));
        String mount = "mount -t tmpfs -o size=3m tmpfs \"$0\" && exec \"$@\"";
        assertThat(onOwnDisk(mount, small))
                .contains("full FULL " + small)
                .contains("The disk is full")
                .contains("Make room, then do the last step again: it was not kept.")
                .contains("sound and complete")
                .contains("went on after room was made");
    }

    private String onOwnDisk(String mount, Path place) throws Exception {
        var wrapper = new java.util.ArrayList<>(OWN_DISK);
        wrapper.add(mount);
        wrapper.add(place.toString());
        try (Child child = Child.start(wrapper, DiskTrial.class, folder, place.toString())) {
            assertThat(child.await())
                    .as("a disk of its own by '" + String.join(" ", OWN_DISK) + "': " + child.words())
                    .isEqualTo(0);
            return child.words();
        }
    }

    private void assertRefusedAndLeft(Kind kind, String words) throws IOException {
        byte[] before = Files.readAllBytes(file);
        assertRefused(kind, words);
        assertThat(file).hasBinaryContent(before);
    }

    private void assertRefused(Kind kind, String words) {
        var failure = catchThrowableOfType(StorageFailure.class, () -> Store.open(data));
        assertThat(failure).isNotNull();
        assertThat(failure.kind()).as(failure.getMessage()).isEqualTo(kind);
        assertThat(failure).hasMessageStartingWith(data.toString()).hasMessageContaining(words);
    }

    private void overwrite(long from, byte[] bytes) throws IOException {
        try (var raw = new RandomAccessFile(file.toFile(), "rw")) {
            raw.seek(from);
            raw.write(bytes);
        }
    }

    private void sql(String statement) throws SQLException {
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                var each = connection.createStatement()) {
            each.execute(statement);
        }
    }
}
