package org.hosewright.server.password;

import com.nulabinc.zxcvbn.Zxcvbn;
import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.person.Secret;
import org.hosewright.server.guard.Refusal;

/** Passwords: which ones will do, how they are kept, whether a typed one is right. */
public final class Passwords {
    private static final int LEAST_LENGTH = 12;
    private static final int MOST_LENGTH = 128;

    /** Letters and digits that are neither the person's name nor the program's. */
    private static final int LEAST_OWN = 8;

    /** The strength from which a password is not guessed in a day, on the library's scale of 0 to 4. */
    private static final int LEAST_STRENGTH = 3;

    /* Costs as the OWASP Password Storage Cheat Sheet gives them for Argon2id: 19 MiB, two rounds, one lane. */
    private static final int MEMORY_KIB = 19_456;
    private static final int ROUNDS = 2;
    private static final int LANES = 1;
    private static final int HASH_BYTES = 32;
    private static final int SALT_BYTES = 16;

    /** How many are worked out at once, so that many attempts do not take the machine's memory. */
    private static final int AT_ONCE = 2;

    private static final int PATIENCE_S = 10;

    private final Argon2Function function =
            Argon2Function.getInstance(MEMORY_KIB, ROUNDS, LANES, HASH_BYTES, Argon2.ID);
    private final Semaphore places = new Semaphore(AT_ONCE, true);

    public Passwords() {}

    /** Hashes a password that will do.
     *
     * @param name of the person, which may not be the password
     * @param given true where somebody else than the person chose it
     * @throws InvalidInput it is too short, too long or easily guessed; the password is not in the message
     */
    public Secret secret(String password, String name, boolean given) {
        int length = password.codePointCount(0, password.length());
        if (length < LEAST_LENGTH || length > MOST_LENGTH) {
            throw refused(length + " characters", LEAST_LENGTH + " to " + MOST_LENGTH + " characters");
        }
        if (own(password, name).length() < LEAST_OWN
                || new Zxcvbn().measure(password).getScore() < LEAST_STRENGTH) {
            throw refused("one that is easily guessed", "four words that do not belong together");
        }
        return new Secret(hash(password), given);
    }

    /** What a password holds besides the person's and the program's name. */
    private static String own(String password, String name) {
        String rest = letters(password);
        for (String known : List.of(letters(name), "hosewright")) {
            rest = known.isEmpty() ? rest : rest.replace(known, "");
        }
        return rest;
    }

    private static String letters(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    /** True where a typed password is the one that was hashed. */
    public boolean isRight(String typed, Secret secret) {
        return typed.length() <= MOST_LENGTH && isHashOf(typed, secret.hash());
    }

    /** Takes as long as {@link #isRight} does, so that a name that nobody has cannot be told by the time it takes. */
    public void pretend(String typed) {
        if (typed.length() <= MOST_LENGTH) {
            Objects.requireNonNull(hash(typed));
        }
    }

    private boolean isHashOf(String typed, String hash) {
        return inTurn(() -> Password.check(typed, hash).with(Argon2Function.getInstanceFromHash(hash)));
    }

    private String hash(String password) {
        return inTurn(() ->
                Password.hash(password).addRandomSalt(SALT_BYTES).with(function).getResult());
    }

    private <T> T inTurn(Supplier<T> work) {
        try {
            if (!places.tryAcquire(PATIENCE_S, TimeUnit.SECONDS)) {
                throw new Refusal(503, "Busy", "Too many people are signing in at once; try again in a minute.");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refusal(503, "Stopping", "The program is being stopped.");
        }
        try {
            return work.get();
        } finally {
            places.release();
        }
    }

    private static InvalidInput refused(String value, String allowed) {
        return new InvalidInput("password", value, allowed, "");
    }
}
