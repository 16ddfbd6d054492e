package org.hosewright.ledger.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.BrindleFalls;
import org.hosewright.ledger.kit.FlownRange;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.reach.ReachAnalysis;
import org.hosewright.ledger.reach.ReachReport;
import org.junit.jupiter.api.Test;

class CardAnalysisTest {
    /** A pressure may differ by the last digits of a unit conversion [psi]. */
    private static final double CONVERSION = 1e-9;

    /** 1.7 psi at 100 gpm and about 161 gpm: what the piping takes [psi]; the rounded figure shifts it a little. */
    private static final double PIPING = 0.3;

    @Test
    void firstLengthAndAHandCalculationAgree() {
        // 50 + 9.25 x 1.608^2 x 2 + 1.7 x 1.608^2 = 102.2: nearest multiple of 5 is 100
        CardEntry first = entries(Optional.empty(), 0, 150).get(0);
        assertThat(first.length().feet()).isCloseTo(200, within(CONVERSION));
        assertThat(first.sections()).isEqualTo(4);
        assertThat(first.gauge().psi()).isCloseTo(100, within(CONVERSION));
        assertThat(first.stands()).isTrue();
    }

    @Test
    void safety02FigureIsWhatTheNamedGaugeShows() {
        CardEntry straight =
                entries(Optional.of(new Tap.BeforePiping()), 0, 150).get(0);
        CardEntry high = entries(Optional.of(new Tap.BeforePiping()), 4, 150).get(0);
        assertThat(straight.check().ordered().psi()).isCloseTo(100, within(CONVERSION));
        assertThat(high.gauge().psi()).isCloseTo(105, within(CONVERSION));
        assertThat(high.check().ordered().psi()).isCloseTo(101, within(CONVERSION));
    }

    @Test
    void safety02GaugeAtTheDischargeDoesNotShowThePiping() {
        CardEntry behind = entries(Optional.of(new Tap.AtDischarge()), 0, 150).get(0);
        double piping = 1.7 * 1.608 * 1.608;
        assertThat(behind.check().ordered().psi()).isCloseTo(behind.gauge().psi() + piping, within(PIPING));
        assertThat(line(Optional.of(new Tap.AtDischarge()), 0, 150).gauge()).contains("gauge-a", "behind its piping");
    }

    @Test
    void safety04RefusedFigureSaysWhatWouldDo() {
        List<CardEntry> entries = entries(Optional.empty(), 0, 161);
        CardEntry first = entries.get(0);
        assertThat(first.stands()).isFalse();
        assertThat(first.refusal()).anyMatch(says -> says.contains("flow")).anyMatch(says -> says.contains("would do"));
    }

    @Test
    void lengthsRunFromTheRigToTheLongestSafeOneHolds() {
        CardLine line = line(Optional.empty(), 0, 150);
        List<CardEntry> entries = line.entries();
        assertThat(entries.get(0).length().feet()).isCloseTo(200, within(CONVERSION));
        assertThat(entries.get(entries.size() - 1).length().feet())
                .isCloseTo(line.longestSafe().feet(), within(CONVERSION));
        assertThat(entries)
                .isSortedAccordingTo(
                        (a, b) -> Double.compare(a.gauge().pascals(), b.gauge().pascals()));
    }

    @Test
    void safety01FloorsDoNotLiftThePressureAboveTheFirstLimit() {
        // The ceiling of 250 psi comes before 90 % of the hose's 300 psi test.
        assertThat(line(Optional.empty(), 0, 150).mostGauge().orElseThrow().psi())
                .isCloseTo(250, within(CONVERSION));
    }

    @Test
    void safety15CardStopsShortByTheReserve() {
        Kit kit = BrindleFalls.kit(Optional.empty(), 0, 150);
        ReachReport reach = ReachAnalysis.of(
                kit, new ReachAnalysis.Question(Length.ofFeet(0), Optional.empty(), Optional.of(BrindleFalls.TODAY)));
        double safe = reach.packages().get(0).result().longestSafe().feet();
        assertThat(line(Optional.empty(), 0, 150).longestSafe().feet()).isCloseTo(safe - 50, within(CONVERSION));
    }

    @Test
    void safety15LengthsBeyondTheNightAreMarked() {
        List<CardEntry> entries = entries(Optional.empty(), 0, 150);
        assertThat(entries).allMatch(entry -> entry.tested() == entry.length().feet() <= 750 + CONVERSION);
    }

    /** The package flows 161 gpm: a night that flew its hose at no more than 140 gpm did not test it. */
    @Test
    void safety15FlowsBeyondTheNightAreMarked() {
        Kit plain = BrindleFalls.kit(Optional.empty(), 0, 150);
        for (int most_gpm : new int[] {140, 161}) {
            FlownRange range = new FlownRange(Flow.ofGpm(95), Flow.ofGpm(most_gpm));
            CardSet cards = CardAnalysis.of(
                    BrindleFalls.flown(plain, Map.of("attack-175", range)),
                    "abc123",
                    BrindleFalls.TODAY,
                    Rounding.Way.NEAREST);
            List<CardEntry> entries = cards.engines().get(0).lines().get(0).entries();
            assertThat(entries).anyMatch(entry -> entry.length().feet() <= 750);
            assertThat(entries)
                    .allMatch(entry ->
                            entry.tested() == (most_gpm == 161 && entry.length().feet() <= 750 + CONVERSION));
        }
    }

    @Test
    void safety14FloorSaysItsHeightAndHowFloorsAreCounted() {
        CardLine line = line(Optional.empty(), 0, 150);
        assertThat(line.floorHeight().feet()).isCloseTo(10, within(CONVERSION));
        assertThat(line.floorAdder().psi()).isCloseTo(5, within(CONVERSION));
        assertThat(set(Optional.empty(), 0, 150).assumed()).anyMatch(says -> says.contains("floor 1"));
    }

    private static List<CardEntry> entries(Optional<Tap> gauge, double offset, double least) {
        return line(gauge, offset, least).entries();
    }

    private static CardLine line(Optional<Tap> gauge, double offset, double least) {
        return set(gauge, offset, least).engines().get(0).lines().get(0);
    }

    private static CardSet set(Optional<Tap> gauge, double offset, double least) {
        CardSet set = CardAnalysis.of(
                BrindleFalls.kit(gauge, offset, least), "abc123", BrindleFalls.TODAY, Rounding.Way.NEAREST);
        assertThat(set.step()).isEqualTo(Pressure.ofPsi(5));
        return set;
    }
}
