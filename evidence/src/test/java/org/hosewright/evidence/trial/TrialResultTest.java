package org.hosewright.evidence.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.hosewright.evidence.trial.Comparison.Verdict;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/** What a trial says, in numbers and in sentences. */
class TrialResultTest {
    private static final long SEED = 4;

    private static final TrialWords WORDS = new TrialWords(UnitSystem.US, Map.of());

    /** A loses 6 psi less than B; C and B are the same hose. */
    @Test
    void plainWinnerAndTieHold() {
        List<Relay> relays = exact("A", 42, 43, 41, 42, 42);
        relays.addAll(exact("B", 48, 47, 49, 48, 48));
        relays.addAll(exact("C", 49, 43, 50, 52, 46));
        TrialResult result = TrialResult.of(Trials.stake(1), List.of("A", "B", "C"), relays);
        List<String> says = WORDS.list(result);
        assertThat(says.get(0)).startsWith("A loses 6 psi less than B over 300 ft, between 4 and 8;");
        assertThat(says.get(2))
                .startsWith("B and C cannot be told apart: ")
                .contains("more re-lay", "if they go on as they have");
        assertThat(result.findBest()).isEmpty();
        assertThat(WORDS.verdict(result)).isEqualTo("No winner: the re-lays do not carry one.");
    }

    @Test
    void moreRelaysOfATieSettleItHold() {
        List<Relay> relays = exact("A", 40, 45, 43, 38);
        relays.addAll(exact("B", 42, 44, 41, 46));
        TrialResult result = TrialResult.of(Trials.stake(1), List.of("A", "B"), relays);
        Comparison open = result.pairs().get(0);
        assertThat(open.verdict()).isEqualTo(Verdict.OPEN);
        int more = open.more().orElseThrow();
        assertThat(goneOn(relays, more)).isNotEqualTo(Verdict.OPEN);
        assertThat(more).isBetween(1, 40);
    }

    /** The verdict after so many more re-lays whose mean and scatter are as they were. */
    private static Verdict goneOn(List<Relay> relays, int more) {
        Comparing comparing = new Comparing(Trials.stake(1), Family.of(2));
        List<Standing> then = new ArrayList<>();
        for (String label : List.of("A", "B")) {
            Standing now = Standing.of(label, relays);
            then.add(new Standing(label, now.relays() + more, now.mean(), now.scatter(), now.within()));
        }
        return comparing.compare(then.get(0), then.get(1)).verdict();
    }

    @Test
    void kindsThatDifferByNothingThatMattersHold() {
        List<Relay> relays = exact("A", 40, 41, 40, 39, 40, 40);
        relays.addAll(exact("B", 40, 40, 41, 40, 39, 41));
        TrialResult result = TrialResult.of(Trials.stake(1), List.of("A", "B"), relays);
        assertThat(result.pairs().get(0).verdict()).isEqualTo(Verdict.ALIKE);
        assertThat(WORDS.verdict(result)).isEqualTo("No winner: they do not differ by anything that matters.");
    }

    /** Gauges read in whole psi that show the same thrice leave the steps' own doubt: nothing between them to two steps apart. */
    @Test
    void stepsOfTheGaugeStayInTheIntervalHold() {
        List<Relay> relays = exact("A", 40, 40, 40);
        relays.addAll(exact("B", 41, 41, 41));
        Comparison pair = TrialResult.of(Trials.stake(1), List.of("A", "B"), relays)
                .pairs()
                .get(0);
        assertThat(pair.low()).isLessThan(0.25 * Trials.PSI);
        assertThat(pair.high()).isGreaterThan(1.75 * Trials.PSI);
    }

    /** Readings within one charge are one observation: more of them make nothing surer than the re-lays are. */
    @Test
    void readingsOfOneChargeAreOneObservationHolds() {
        List<Relay> once = exact("A", 40, 44, 42);
        once.addAll(exact("B", 46, 43, 49));
        List<Relay> thrice = once.stream()
                .map(relay -> new Relay(relay.label(), List.of(relay.mean(), relay.mean(), relay.mean())))
                .toList();
        Comparison few =
                TrialResult.of(Trials.stake(1), List.of("A", "B"), once).pairs().get(0);
        Comparison many = TrialResult.of(Trials.stake(1), List.of("A", "B"), thrice)
                .pairs()
                .get(0);
        assertThat(many).isEqualTo(few);
    }

    /** The kind laid once, or not yet. */
    @Test
    void tooFewRelaysSayNothingHold() {
        List<Relay> relays = exact("A", 40, 41);
        relays.addAll(exact("B", 60));
        TrialResult result = TrialResult.of(Trials.stake(1), List.of("A", "B", "C"), relays);
        assertThat(result.pairs()).isEmpty();
        assertThat(result.missing()).containsExactly("B", "C");
        assertThat(WORDS.verdict(result)).startsWith("No verdict yet");
    }

    @Test
    void aLabelOutsideTheTrialIsRefused() {
        assertThatThrownBy(() -> TrialResult.of(Trials.stake(1), List.of("A", "B"), exact("D", 40)))
                .isInstanceOf(InvalidInput.class);
    }

    /** Every kind once in each round; the same seed the same order, and every label as often first. */
    @Test
    void blindOrderHolds() {
        List<String> kinds = List.of("old", "new", "lent");
        assertThat(BlindOrder.of(kinds, 4, SEED)).isEqualTo(BlindOrder.of(kinds, 4, SEED));
        int[] first = new int[3];
        int[] keyed = new int[3];
        for (long seed = 0; seed < 3000; seed++) {
            BlindOrder drawn = BlindOrder.of(kinds, 4, seed);
            assertThat(drawn.key().values()).containsExactlyInAnyOrderElementsOf(kinds);
            for (int round = 0; round < 4; round++) {
                assertThat(drawn.order().subList(3 * round, 3 * round + 3)).containsExactlyInAnyOrder("A", "B", "C");
            }
            first["ABC".indexOf(drawn.order().get(3))]++;
            keyed[kinds.indexOf(drawn.key().get("A"))]++;
        }
        // 1000 expected, deviation 26; four of them.
        for (int i = 0; i < 3; i++) {
            assertThat(first[i]).isBetween(896, 1104);
            assertThat(keyed[i]).isBetween(896, 1104);
        }
    }

    /** The interval holds the true difference in at least 95 of 100 trials, and the sign of a told one is right. */
    @Test
    void intervalsAndSignsHold() {
        System.out.println("seed " + SEED);
        Random random = new Random(SEED);
        int held = 0;
        int wrong = 0;
        for (int i = 0; i < 2000; i++) {
            List<Relay> relays = Trials.relays("A", 4, 40, 1, random);
            relays.addAll(Trials.relays("B", 6, 46, 4, random));
            Comparison pair = TrialResult.of(Trials.stake(0), List.of("A", "B"), relays)
                    .pairs()
                    .get(0);
            double truth = pair.first().equals("A") ? 6 * Trials.PSI : -6 * Trials.PSI;
            held += pair.low() <= truth && truth <= pair.high() ? 1 : 0;
            wrong += pair.verdict() == Verdict.TOLD && pair.first().equals("B") ? 1 : 0;
        }
        System.out.println("held " + held + ", wrong sign " + wrong + " of 2000");
        assertThat(held).isBetween(1880, 1980);
        assertThat(wrong).isLessThan(5);
    }

    private static List<Relay> exact(String label, double... values_psi) {
        List<Relay> relays = new ArrayList<>();
        for (double value : values_psi) {
            relays.add(new Relay(label, List.of(value * Trials.PSI)));
        }
        return relays;
    }
}
