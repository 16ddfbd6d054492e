package org.hosewright.ledger.exchange;

import java.time.Instant;
import java.util.Locale;

/** A neighbouring company that somebody here confirmed by its fingerprint, with the last that it handed over.
 *
 * @param id the name that all that is theirs bears in front, so that it is never taken for our own
 * @param version how often it was saved here
 * @param last the last that it handed over
 * @param confirmedBy who compared the fingerprint
 * @param confirmedAt when
 */
public record Neighbour(String id, long version, SignedHandover last, String confirmedBy, Instant confirmedAt) {
    private static final int LONGEST_NAME = 60;

    public String company() {
        return last.handover().company();
    }

    /** The id of a company that bears a key: its name as letters, then the start of the fingerprint. */
    public static String idOf(SignedHandover signed) {
        String plain = signed.handover()
                .company()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String name = plain.length() > LONGEST_NAME ? plain.substring(0, LONGEST_NAME) : plain;
        return (name.isEmpty() ? "neighbour" : name) + "-"
                + signed.fingerprint().start();
    }

    /** How a name of theirs is said here: theirs first. */
    public String theirs(String name) {
        return company() + ": " + name;
    }
}
