package org.hosewright.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import org.hosewright.hydraulics.error.InvalidInput;

/** A file that appears whole and flushed, or not at all. */
final class BackupFile {
    private BackupFile() {}

    /** Lets the body write aside, flushes that, and gives it its name.
     *
     * @throws InvalidInput a file of that name exists: a backup never overwrites
     */
    static void write(Path target, Body body) {
        if (Files.exists(target)) {
            throw new InvalidInput("backup file", target.toString(), "a name that no file has yet", "");
        }
        Path part = target.resolveSibling(target.getFileName() + ".part");
        try {
            writeAside(part, body);
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw Failures.ofFile(e, target.toString());
        } catch (SQLException | RuntimeException e) {
            throw Failures.wrap(e, target.toString());
        }
    }

    private static void writeAside(Path part, Body body) throws SQLException, IOException {
        Files.deleteIfExists(part);
        boolean whole = false;
        try {
            body.write(part);
            try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            whole = true;
        } finally {
            if (!whole) {
                Files.deleteIfExists(part);
            }
        }
    }

    /** What writes the file. */
    interface Body {
        void write(Path part) throws SQLException, IOException;
    }
}
