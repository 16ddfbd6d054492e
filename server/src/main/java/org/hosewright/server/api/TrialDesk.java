package org.hosewright.server.api;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.hosewright.evidence.trial.BlindOrder;
import org.hosewright.files.trial.TrialKeyText;
import org.hosewright.files.trial.TrialText;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafDraft;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.LeafSaving;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.trial.KeptTrial;
import org.hosewright.ledger.trial.TrialKey;
import org.hosewright.ledger.trial.TrialPlan;

/** Where blind trials are kept: each trial as one leaf, its key as another that no page reads. */
final class TrialDesk {
    /** Letters that are not mistaken for each other on paper. */
    private static final String LETTERS = "ABCDEFGHJKMNPQRSTVWXYZ23456789";

    private static final int CODE_LETTERS = 12;

    /** Two people who type at once are never many. */
    private static final int TRIES = 8;

    private final Leaves leaves;
    private final CurrentKit current;
    private final Clock clock;
    private final SecureRandom chance = new SecureRandom();

    TrialDesk(Leaves leaves, CurrentKit current, Clock clock) {
        this.leaves = leaves;
        this.current = current;
        this.clock = clock;
    }

    /** A trial begun, and the code that opens its key to those who hold it: told this once.
     *
     * @param saving how it ended
     * @param code in groups of four
     */
    record Begun(LeafSaving saving, String code) {}

    UnitSystem units() {
        return current.find().map(read -> read.document().kit().units()).orElse(UnitSystem.US);
    }

    String company() {
        return current.find().map(read -> read.document().kit().company()).orElse("");
    }

    Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }

    Leaf leaf(String id) {
        return leaves.find(LeafKind.TRIAL, id).orElseThrow(() -> Refused.unknown("trial"));
    }

    /** Draws labels and order, puts the key away, keeps the trial. */
    Begun begin(TrialPlan plan, Act act) {
        if (!plan.isHolder(act.who())) {
            throw new InvalidInput(
                    "person who sets the trial up",
                    act.who(),
                    "one who holds the key, as the code is told to that one",
                    "");
        }
        BlindOrder drawn = BlindOrder.of(plan.kinds(), plan.relays(), chance.nextLong());
        String code = code();
        String key = TrialKeyText.write(TrialKey.of(drawn.key(), code));
        if (leaves.save(LeafDraft.ofNew(LeafKind.TRIAL_KEY, plan.name(), key), act) instanceof LeafSaving.Saved away) {
            String text = TrialText.write(KeptTrial.begin(plan, drawn.order()), units());
            String id = away.leaf().id();
            return new Begun(leaves.save(new LeafDraft(LeafKind.TRIAL, id, 0, plan.name(), text), act), code);
        }
        throw new IllegalStateException("a new key that somebody else has saved");
    }

    /** Changes the last version of a trial; where somebody was faster, the version that then stands. */
    LeafSaving change(String id, UnaryOperator<KeptTrial> change, Act act) {
        LeafSaving saving = changeOnce(id, change, act);
        for (int i = 1; i < TRIES && saving instanceof LeafSaving.Conflict; i++) {
            saving = changeOnce(id, change, act);
        }
        return saving;
    }

    private LeafSaving changeOnce(String id, UnaryOperator<KeptTrial> change, Act act) {
        Leaf leaf = leaf(id);
        String text = TrialText.write(change.apply(TrialText.read(leaf.text())), units());
        return leaves.save(new LeafDraft(LeafKind.TRIAL, id, leaf.version(), leaf.title(), text), act);
    }

    /** The key of a trial: never for an answer before the trial is open, save to a holder with the code. */
    TrialKey key(String id) {
        Optional<Leaf> leaf = leaves.find(LeafKind.TRIAL_KEY, id);
        return TrialKeyText.read(
                leaf.orElseThrow(() -> Refused.unknown("trial")).text());
    }

    /** Further rounds under the same labels. */
    KeptTrial more(KeptTrial trial, int relays) {
        return trial.withStage(BlindOrder.more(trial.labels(), relays, chance.nextLong()));
    }

    private String code() {
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < CODE_LETTERS; i++) {
            code.append(i > 0 && i % 4 == 0 ? "-" : "").append(LETTERS.charAt(chance.nextInt(LETTERS.length())));
        }
        return code.toString();
    }
}
