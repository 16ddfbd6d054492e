package org.hosewright.files.plain;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import org.hosewright.hydraulics.error.InvalidInput;

/** A file put away whole: written aside, then renamed, so that no half of it is ever seen. */
public final class NewFile {
    private NewFile() {}

    /** Writes a file.
     *
     * @param force whether a file that is already there may be replaced
     * @throws InvalidInput the file is there and force was not given, or its folder is not there
     * @throws UncheckedIOException the disk failed; nothing was changed
     */
    public static void write(Path file, byte[] content, boolean force) {
        check(file, force);
        Path whole = file.toAbsolutePath();
        Path aside = whole.resolveSibling("." + whole.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            try (FileChannel channel =
                    FileChannel.open(aside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                ByteBuffer left = ByteBuffer.wrap(content);
                while (left.hasRemaining()) {
                    channel.write(left);
                }
                channel.force(true);
            }
            Files.move(aside, whole, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new UncheckedIOException("could not write " + file, e);
        } finally {
            discard(aside);
        }
    }

    /** Refuses, before any work is done, a file that {@link #write} would refuse. */
    public static void check(Path file, boolean force) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new InvalidInput("folder of the file to write", String.valueOf(folder), "a folder that is there", "");
        }
        if (Files.isDirectory(file)) {
            throw new InvalidInput("file to write", file.toString(), "a file, not a folder", "");
        }
        if (Files.exists(file) && !force) {
            throw new InvalidInput("file to write", file.toString(), "a new name, or --force to replace it", "");
        }
    }

    private static void discard(Path aside) {
        try {
            Files.deleteIfExists(aside);
        } catch (IOException e) {
            throw new UncheckedIOException("could not remove " + aside, e);
        }
    }
}
