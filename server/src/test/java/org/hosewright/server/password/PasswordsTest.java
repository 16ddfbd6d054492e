package org.hosewright.server.password;

import static org.assertj.core.api.Assertions.assertThat;

import org.hosewright.ledger.person.Secret;
import org.junit.jupiter.api.Test;

/** How passwords are kept. */
final class PasswordsTest {
    private static final String PASSWORD = "quiet lantern brindle ford";

    private final Passwords passwords = new Passwords();

    /** Costs: OWASP Password Storage Cheat Sheet, Argon2id with 19 MiB, two rounds, one lane. Form: RFC 9106's reference
     * encoding.
     */
    @Test
    void hashIsArgon2idWithTheStatedCostsHolds() {
        Secret one = passwords.secret(PASSWORD, "A. Fenn", false);
        Secret other = passwords.secret(PASSWORD, "A. Fenn", false);
        assertThat(one.hash()).startsWith("$argon2id$v=19$m=19456,t=2,p=1$").doesNotContain(PASSWORD);
        assertThat(one.hash()).as("each with a salt of its own").isNotEqualTo(other.hash());
        assertThat(one.toString()).doesNotContain(one.hash());
    }

    @Test
    void rightOneIsKnownHolds() {
        Secret secret = passwords.secret(PASSWORD, "A. Fenn", false);
        assertThat(passwords.isRight(PASSWORD, secret)).isTrue();
        assertThat(passwords.isRight(PASSWORD + " ", secret)).isFalse();
        assertThat(passwords.isRight("", secret)).isFalse();
        assertThat(passwords.isRight("x".repeat(1_000_000), secret))
                .as("too long to be tried")
                .isFalse();
    }
}
