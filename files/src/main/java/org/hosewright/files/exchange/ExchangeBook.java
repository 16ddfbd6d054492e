package org.hosewright.files.exchange;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.exchange.Arrival;
import org.hosewright.ledger.exchange.CompanyKey;
import org.hosewright.ledger.exchange.Fingerprint;
import org.hosewright.ledger.exchange.HandedPackage;
import org.hosewright.ledger.exchange.Handover;
import org.hosewright.ledger.exchange.Neighbour;
import org.hosewright.ledger.exchange.SignedHandover;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafDraft;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.LeafSaving;
import org.hosewright.ledger.leaf.Leaves;

/** What the company handed over and what its neighbours handed to it, in leaves of the record; never in its kit. */
public final class ExchangeBook {
    /** The one leaf that holds the last file handed over; its versions are those before. */
    private static final String HANDED = "to-neighbours";

    private static final int MOST_NAMED = 4;
    private static final int LONGEST_TITLE = 200;

    private final Leaves leaves;

    public ExchangeBook(Leaves leaves) {
        this.leaves = leaves;
    }

    /** The neighbours, by name. */
    public List<Neighbour> list() {
        return leaves.listWhole(LeafKind.NEIGHBOUR).stream()
                .map(NeighbourText::read)
                .sorted(Comparator.comparing(Neighbour::company).thenComparing(Neighbour::id))
                .toList();
    }

    public Optional<Neighbour> find(String id) {
        return leaves.find(LeafKind.NEIGHBOUR, id).map(NeighbourText::read);
    }

    /** A neighbour's file as it came, judged; nothing is kept.
     *
     * @param source name of the file, for errors
     * @param own the own company's fingerprint, where it has a key
     */
    public Arrival judge(byte[] file, String source, Optional<Fingerprint> own, Instant now) {
        return Arrival.of(ExchangeFile.read(file, source), list(), own, now);
    }

    /** Keeps what a neighbour handed over.
     *
     * @param told the fingerprint that somebody was told by telephone; needed at the first use of a key
     */
    public LeafSaving keep(Arrival arrival, Optional<Fingerprint> told, Instant now, Act act) {
        arrival.require(told);
        SignedHandover signed = arrival.signed();
        String id = arrival.held().map(Neighbour::id).orElseGet(() -> Neighbour.idOf(signed));
        long version = arrival.held().map(Neighbour::version).orElse(0L);
        String text = NeighbourText.write(
                signed,
                arrival.held().map(Neighbour::confirmedBy).orElse(act.who()),
                arrival.held().map(Neighbour::confirmedAt).orElse(now));
        LeafSaving saving = save(id, version, signed, text, act);
        if (arrival.firstUse() && saving instanceof LeafSaving.Conflict conflict) {
            Leaf takenOut = conflict.stored();
            Arrival.of(signed, List.of(NeighbourText.read(takenOut)), Optional.empty(), now);
            return save(id, takenOut.version(), signed, text, act);
        }
        return saving;
    }

    private LeafSaving save(String id, long version, SignedHandover signed, String text, Act act) {
        String company = signed.handover().company();
        return leaves.save(new LeafDraft(LeafKind.NEIGHBOUR, id, version, company, text), act);
    }

    /** Takes a neighbour out: it is no longer listed, and its key must be confirmed anew. */
    public LeafSaving takeOut(Neighbour neighbour, Act act) {
        return leaves.takeOut(LeafKind.NEIGHBOUR, neighbour.id(), neighbour.version(), act);
    }

    /** The last file that the company handed over. */
    public Optional<SignedHandover> findHanded() {
        return leaves.find(LeafKind.HANDOVER, HANDED).map(ExchangeBook::read);
    }

    /** Signs a handover and keeps the file, so that it stands in the history before anybody has it. */
    public SignedHandover handOver(Handover handover, CompanyKey key, Act act) {
        findHanded().filter(last -> !last.key().equals(key.publicKey())).ifPresent(ExchangeBook::refuseOtherKey);
        SignedHandover signed = ExchangeFile.write(handover, key);
        long version = leaves.find(LeafKind.HANDOVER, HANDED).map(Leaf::version).orElse(0L);
        LeafSaving saving = leaves.save(draft(signed, version), act);
        if (version == 0 && saving instanceof LeafSaving.Conflict takenOut) {
            saving = leaves.save(draft(signed, takenOut.stored().version()), act);
        }
        if (saving instanceof LeafSaving.Conflict conflict) {
            throw new InvalidInput(
                    "file for neighbours",
                    "made by two people at once",
                    "the other one's, made by " + conflict.stored().mark().who() + "; or make it again",
                    "");
        }
        return signed;
    }

    /** Lets go of what was handed over under a key that is lost, so that the next file may bear a new one. */
    public void letGoOfKey(Act act) {
        leaves.find(LeafKind.HANDOVER, HANDED)
                .ifPresent(last -> leaves.takeOut(LeafKind.HANDOVER, HANDED, last.version(), act));
    }

    private static LeafDraft draft(SignedHandover signed, long version) {
        Handover handover = signed.handover();
        String names = handover.packages().stream()
                .map(HandedPackage::name)
                .limit(MOST_NAMED)
                .collect(Collectors.joining(", "));
        String title = handover.isWithdrawal() ? "withdrawn from neighbours" : names;
        return new LeafDraft(
                LeafKind.HANDOVER,
                HANDED,
                version,
                title.length() > LONGEST_TITLE ? title.substring(0, LONGEST_TITLE) : title,
                signed.text());
    }

    private static void refuseOtherKey(SignedHandover last) {
        throw new InvalidInput(
                "key on this machine",
                "another than the one of the last file handed over",
                "exchange.key of the machine that made it, "
                        + last.fingerprint().groups()
                        + ", put beside this record; or, where that is lost, --new-key on the command line, after which"
                        + " every neighbour must confirm the new one",
                "");
    }

    private static SignedHandover read(Leaf leaf) {
        return ExchangeFile.read(leaf.text().getBytes(StandardCharsets.UTF_8), "file handed over");
    }
}
