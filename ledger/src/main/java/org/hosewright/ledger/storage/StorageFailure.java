package org.hosewright.ledger.storage;

import org.jspecify.annotations.Nullable;

/** The record cannot be read or written, said so that the person in front of the machine knows what to do.
 *
 * <p>Nothing of the act that failed was kept, except where a database over the network fell silent
 * ({@link Kind#UNREACHABLE}): then look before doing it again.
 */
public final class StorageFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** What stands in the way. */
    public enum Kind {
        /** It may not be written. */
        READ_ONLY,
        /** No room is left on the disk. */
        FULL,
        /** It does not hold together. */
        DAMAGED,
        /** Another program holds it. */
        IN_USE,
        /** A later version of the product wrote it. */
        NEWER,
        /** It did not answer. */
        UNREACHABLE,
        /** Anything else that the database said. */
        OTHER
    }

    private final Kind kind;
    private final String where;

    /** Makes the error.
     *
     * @param kind what stands in the way
     * @param reason what is wrong, as a sentence
     * @param remedy what would do, as a sentence
     * @param where folder or address of the store, without a password
     * @param cause what the database said
     */
    public StorageFailure(Kind kind, String reason, String remedy, String where, @Nullable Throwable cause) {
        super(where + ": " + reason + " " + remedy, cause);
        this.kind = kind;
        this.where = where;
    }

    public Kind kind() {
        return kind;
    }

    public String where() {
        return where;
    }
}
