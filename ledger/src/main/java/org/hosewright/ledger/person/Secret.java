package org.hosewright.ledger.person;

import org.hosewright.hydraulics.error.InvalidInput;

/** What is kept of a password: its Argon2id hash with salt and costs. It is shown nowhere.
 *
 * @param hash in the usual text form, "$argon2id$v=19$..."
 * @param given true where somebody else than the person chose the password
 */
public record Secret(String hash, boolean given) {
    private static final String FORM = "$argon2id$";

    public Secret {
        if (!hash.startsWith(FORM)) {
            throw new InvalidInput("hash of a password", "another form", "one that begins with " + FORM, "");
        }
    }

    @Override
    public String toString() {
        return "a secret";
    }
}
