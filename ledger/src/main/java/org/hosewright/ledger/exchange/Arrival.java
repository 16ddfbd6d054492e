package org.hosewright.ledger.exchange;

import java.text.Normalizer;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;

/** A neighbour's file that may be taken in, and what must be done first.
 *
 * @param signed the file
 * @param held what is held of the same company; empty at the first use of its key
 */
public record Arrival(SignedHandover signed, Optional<Neighbour> held) {
    /** Two clocks may differ by so much. @source a choice of this program: a day covers every zone */
    private static final Duration CLOCKS = Duration.ofDays(1);

    /** Judges a file whose signature holds.
     *
     * @param known the neighbours that are held
     * @param own the fingerprint of the own company
     * @throws InvalidInput it is not to be taken in, and why
     */
    public static Arrival of(SignedHandover signed, List<Neighbour> known, Optional<Fingerprint> own, Instant now) {
        Handover arrived = signed.handover();
        if (own.filter(signed.fingerprint()::equals).isPresent()) {
            throw new InvalidInput("file of " + arrived.company(), "our own", "a file that a neighbour made", "");
        }
        Optional<Neighbour> held = known.stream()
                .filter(one -> one.last().key().equals(signed.key()))
                .findFirst();
        if (held.isEmpty()) {
            refuseChangedKey(signed, known);
        }
        refuseOutOfDate(arrived, now);
        held.ifPresent(there -> refuseOlder(there, signed));
        return new Arrival(signed, held);
    }

    private static void refuseOutOfDate(Handover arrived, Instant now) {
        if (arrived.issued().isAfter(now.plus(CLOCKS))) {
            throw new InvalidInput(
                    "day the file was made",
                    arrived.issued().toString(),
                    "a day that has come: one of the two clocks is wrong",
                    "");
        }
        if (!arrived.isWithdrawal() && arrived.ranOut(now.atZone(ZoneOffset.UTC).toLocalDate())) {
            throw new InvalidInput(
                    "file of " + arrived.company(),
                    "run out on " + arrived.until(),
                    "a newer one: ask " + arrived.company() + " for it",
                    "");
        }
    }

    /** True where nobody here has compared this key's fingerprint yet. */
    public boolean firstUse() {
        return held.isEmpty();
    }

    /** True where the very same file is held already. */
    public boolean isHeld() {
        return held.filter(there -> there.last().text().equals(signed.text())).isPresent();
    }

    /** Checks the fingerprint that somebody was told by telephone.
     *
     * @throws InvalidInput none was given at the first use, or it is another one
     */
    public void require(Optional<Fingerprint> told) {
        Fingerprint shown = signed.fingerprint();
        if (told.isEmpty() && firstUse()) {
            throw new InvalidInput(
                    "fingerprint of " + signed.handover().company(),
                    "",
                    "what they read out by telephone, on a number you knew before",
                    "");
        }
        if (told.filter(one -> !one.equals(shown)).isPresent()) {
            throw new InvalidInput(
                    "fingerprint",
                    told.get().groups(),
                    "the one of the file; it is another, so the file is not theirs and nothing was taken in",
                    "");
        }
    }

    private static void refuseChangedKey(SignedHandover signed, List<Neighbour> known) {
        String name = plain(signed.handover().company());
        known.stream()
                .filter(one -> plain(one.company()).equals(name))
                .findFirst()
                .ifPresent(one -> {
                    throw new InvalidInput(
                            "key of " + one.company(),
                            signed.fingerprint().groups(),
                            one.last().fingerprint().groups() + ", which " + one.confirmedBy()
                                    + " confirmed. THE KEY HAS CHANGED: somebody else may have made this file. Ring them on a"
                                    + " number you know; if they did make a new key, take the old neighbour out first",
                            "");
                });
    }

    private static void refuseOlder(Neighbour held, SignedHandover signed) {
        Instant has = held.last().handover().issued();
        Instant comes = signed.handover().issued();
        boolean same = held.last().text().equals(signed.text());
        if (comes.isBefore(has) || (comes.equals(has) && !same)) {
            throw new InvalidInput(
                    "file of " + held.company(),
                    "made " + comes + ", OLDER than the one that is held",
                    "one made after " + has + ", which is the one that is held",
                    "");
        }
    }

    /** A name without what the eye passes over: case, accents, spaces, points. */
    private static String plain(String company) {
        return Normalizer.normalize(company, Normalizer.Form.NFKD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]", "");
    }
}
