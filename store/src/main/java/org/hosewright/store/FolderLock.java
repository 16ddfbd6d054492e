package org.hosewright.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.hosewright.ledger.storage.StorageFailure;
import org.hosewright.ledger.storage.StorageFailure.Kind;
import org.jspecify.annotations.Nullable;

/** The hold one process has on a store folder; it ends with the process, however that ends. */
final class FolderLock implements AutoCloseable {
    private static final String NAME = "store.lock";

    /** Beyond the text, so that the text can be read while the lock is held, on every system. */
    private static final long LOCKED_BYTE = 1L << 40;

    private final FileChannel channel;

    private FolderLock(FileChannel channel) {
        this.channel = channel;
    }

    /** Takes the hold.
     *
     * @throws StorageFailure another process has it, or the folder cannot be written
     */
    static FolderLock of(Path folder) {
        Path file = folder.resolve(NAME);
        try {
            Files.createDirectories(folder);
            return hold(FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE), folder);
        } catch (IOException e) {
            throw Failures.ofFile(e, folder.toString());
        }
    }

    private static FolderLock hold(FileChannel channel, Path folder) throws IOException {
        try {
            if (tryLock(channel) == null) {
                throw inUse(folder);
            }
            String holder = "process " + ProcessHandle.current().pid();
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(holder.getBytes(StandardCharsets.UTF_8)));
            return new FolderLock(channel);
        } catch (IOException | RuntimeException e) {
            channel.close();
            throw e;
        }
    }

    private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock(LOCKED_BYTE, 1, false);
        } catch (OverlappingFileLockException e) {
            return null;
        }
    }

    private static StorageFailure inUse(Path folder) {
        String holder;
        try {
            holder = " (" + Files.readString(folder.resolve(NAME)) + ")";
        } catch (IOException e) {
            holder = "";
        }
        return new StorageFailure(
                Kind.IN_USE,
                "Another Hosewright" + holder + " has this store open.",
                "Stop that one first, or start this one with another data folder.",
                folder.toString(),
                null);
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw Failures.ofFile(e, NAME);
        }
    }
}
