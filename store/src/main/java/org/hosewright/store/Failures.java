package org.hosewright.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.sql.SQLException;
import java.util.Locale;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.storage.StorageFailure;
import org.hosewright.ledger.storage.StorageFailure.Kind;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteException;

/** What databases and file systems say, turned into what a person can do. */
final class Failures {
    private Failures() {}

    /** The failure behind an exception; empty where no database is behind it. */
    static Optional<StorageFailure> find(Throwable thrown, String where) {
        Optional<StorageFailure> found = Optional.empty();
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (cause instanceof StorageFailure failure) {
                return Optional.of(failure);
            } else if (cause instanceof SQLException sql) {
                found = Optional.of(of(sqlKind(sql), where, thrown, sql));
            }
        }
        return found;
    }

    /** The exception as a failure of storage, whatever it is, but for wrong input. */
    static RuntimeException wrap(Exception thrown, String where) {
        return thrown instanceof InvalidInput input
                ? input
                : find(thrown, where).orElseGet(() -> of(Kind.OTHER, where, thrown, thrown));
    }

    static StorageFailure ofFile(IOException thrown, String where) {
        boolean readOnly = thrown instanceof AccessDeniedException
                || (thrown instanceof FileSystemException
                        && says(thrown, "read-only", "not permitted", "permission denied"));
        Kind kind = readOnly ? Kind.READ_ONLY : says(thrown, "no space", "quota") ? Kind.FULL : Kind.OTHER;
        return of(kind, where, thrown, thrown);
    }

    static StorageFailure of(Kind kind, String where, @Nullable Throwable cause, @Nullable Throwable said) {
        return new StorageFailure(kind, reason(kind, said), remedy(kind), where, cause);
    }

    private static Kind sqlKind(SQLException sql) {
        return sql instanceof SQLiteException lite ? sqliteKind(lite) : stateKind(sql);
    }

    /** @source SQLite, "Result and Error Codes", the primary code in the low byte */
    private static Kind sqliteKind(SQLiteException lite) {
        return switch (lite.getResultCode().code & 0xff) {
            case 5, 6 -> Kind.IN_USE;
            case 3, 8, 14, 23 -> Kind.READ_ONLY;
            case 11, 26 -> Kind.DAMAGED;
            case 13 -> Kind.FULL;
            default -> Kind.OTHER;
        };
    }

    /** @source PostgreSQL documentation, appendix "PostgreSQL Error Codes" */
    private static Kind stateKind(SQLException sql) {
        String state = sql.getSQLState() == null ? "" : sql.getSQLState();
        return switch (state) {
            case "53100" -> Kind.FULL;
            case "25006", "42501" -> Kind.READ_ONLY;
            case "55P03", "40001", "40P01", "57014" -> Kind.IN_USE;
            case "XX001", "XX002" -> Kind.DAMAGED;
            default -> isSilence(state) ? Kind.UNREACHABLE : Kind.OTHER;
        };
    }

    private static boolean isSilence(String state) {
        return state.startsWith("08")
                || state.startsWith("57P")
                || state.startsWith("28")
                || state.startsWith("3D")
                || state.startsWith("53");
    }

    private static String reason(Kind kind, @Nullable Throwable said) {
        String words = said == null || said.getMessage() == null ? "" : " (" + oneLine(said.getMessage()) + ")";
        return switch (kind) {
            case READ_ONLY -> "The store cannot be written here" + words + ".";
            case FULL -> "The disk is full" + words + ".";
            case DAMAGED -> "The store is damaged" + words + ".";
            case IN_USE -> "Another program keeps the store busy" + words + ".";
            case NEWER -> "The store was written by a later version of Hosewright" + words + ".";
            case UNREACHABLE -> "The database did not let us in" + words + ".";
            case OTHER -> "The store failed" + words + ".";
        };
    }

    private static String remedy(Kind kind) {
        return switch (kind) {
            case READ_ONLY -> "Give this user the right to write there, or choose another data folder.";
            case FULL -> "Make room, then do the last step again: it was not kept.";
            case DAMAGED -> "Nothing was written to it. Copy the folder away as it is, then put back the last backup.";
            case IN_USE -> "Wait for it or end it, then do the last step again: it was not kept.";
            case NEWER -> "Use that version, or a later one; nothing was changed.";
            case UNREACHABLE -> "Check that it runs, and its address, name, user and password.";
            case OTHER -> "The last step was not kept.";
        };
    }

    private static boolean says(Throwable thrown, String... words) {
        String message = String.valueOf(thrown.getMessage()).toLowerCase(Locale.ROOT);
        for (String word : words) {
            if (message.contains(word)) {
                return true;
            }
        }
        return false;
    }

    private static String oneLine(String message) {
        return message.strip().replaceAll("\\s+", " ");
    }
}
