package org.hosewright.ledger.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.order.OrderedLine;
import org.hosewright.ledger.order.OrderedPressure;
import org.junit.jupiter.api.Test;

class ArrivalTest {
    private static final Instant ISSUED = Instant.parse("2026-05-20T09:00:00Z");
    private static final Instant NOW = Instant.parse("2026-06-01T12:00:00Z");
    private static final String KEY = "ab".repeat(32);
    private static final String OTHER_KEY = "cd".repeat(32);

    @Test
    void aFirstUseMustBeToldByTelephoneHolds() {
        Arrival arrival = judge(signed(KEY, ISSUED), List.of());
        assertThat(arrival.firstUse()).isTrue();
        assertThatThrownBy(() -> arrival.require(Optional.empty())).hasMessageContaining("by telephone");
        Fingerprint shown = arrival.signed().fingerprint();
        assertThatThrownBy(() ->
                        arrival.require(Optional.of(signed(OTHER_KEY, ISSUED).fingerprint())))
                .hasMessageContaining("nothing was taken in");
        arrival.require(Optional.of(Fingerprint.parse(" " + shown.groups().toUpperCase(Locale.ROOT))));
    }

    @Test
    void aKnownKeyNeedsNoTelephoneHolds() {
        Arrival arrival = judge(signed(KEY, ISSUED.plusSeconds(60)), held(signed(KEY, ISSUED)));
        assertThat(arrival.firstUse()).isFalse();
        arrival.require(Optional.empty());
        assertThat(judge(signed(KEY, ISSUED), held(signed(KEY, ISSUED))).isHeld())
                .isTrue();
    }

    @Test
    void aChangedKeyIsRefused() {
        refused(signed(OTHER_KEY, ISSUED.plusSeconds(60)), held(signed(KEY, ISSUED)), "THE KEY HAS CHANGED");
        SignedHandover spelled = new SignedHandover(
                handover("ALDWICK  vale Brigade.", ISSUED.plusSeconds(60), LocalDate.of(2027, 1, 1)), OTHER_KEY, "x");
        refused(spelled, held(signed(KEY, ISSUED)), "THE KEY HAS CHANGED");
    }

    @Test
    void anOlderFileIsRefused() {
        refused(signed(KEY, ISSUED.minusSeconds(1)), held(signed(KEY, ISSUED)), "OLDER");
        SignedHandover same = new SignedHandover(signed(KEY, ISSUED).handover(), KEY, "other text");
        refused(same, held(signed(KEY, ISSUED)), "OLDER");
    }

    @Test
    void aFileThatRanOutIsRefused() {
        Handover old = handover("Aldwick Vale Brigade", ISSUED, LocalDate.of(2026, 5, 31));
        refused(new SignedHandover(old, KEY, "x"), List.of(), "run out on 2026-05-31");
        assertThat(Standing.of(old, LocalDate.of(2026, 5, 31))).isEqualTo(Standing.HELD);
        assertThat(Standing.of(old, LocalDate.of(2026, 6, 1))).isEqualTo(Standing.RUN_OUT);
    }

    @Test
    void aFileFromTheFutureIsRefused() {
        refused(signed(KEY, NOW.plusSeconds(90_000)), List.of(), "one of the two clocks is wrong");
    }

    @Test
    void ourOwnFileIsRefused() {
        SignedHandover own = signed(KEY, ISSUED);
        assertThatThrownBy(() -> Arrival.of(own, List.of(), Optional.of(own.fingerprint()), NOW))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("our own");
    }

    @Test
    void aLaterFileNeverBearsAnEarlierMomentHolds() {
        assertThat(Handing.issue(NOW, Optional.empty())).isEqualTo(NOW);
        assertThat(Handing.issue(NOW, Optional.of(NOW.plusSeconds(5)))).isEqualTo(NOW.plusSeconds(6));
    }

    private static void refused(SignedHandover signed, List<Neighbour> known, String says) {
        assertThatThrownBy(() -> judge(signed, known))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining(says);
    }

    private static Arrival judge(SignedHandover signed, List<Neighbour> known) {
        return Arrival.of(signed, known, Optional.empty(), NOW);
    }

    private static List<Neighbour> held(SignedHandover last) {
        return List.of(new Neighbour(Neighbour.idOf(last), 1, last, "R. Vane", ISSUED));
    }

    private static SignedHandover signed(String key, Instant issued) {
        return new SignedHandover(
                handover("Aldwick Vale Brigade", issued, LocalDate.of(2027, 5, 20)), key, "text of " + issued);
    }

    private static Handover handover(String company, Instant issued, LocalDate until) {
        HandedOrder order = new HandedOrder(3, "0a1b2c3d", LocalDate.of(2026, 5, 19), "T. Marsh");
        return new Handover(company, UnitSystem.SI, issued, until, Optional.of(order), List.of(handed()), "");
    }

    static HandedPackage handed() {
        OrderedPressure figure = new OrderedPressure(
                Length.ofFeet(200),
                new Pressure(600e3),
                Flow.ofLitresPerMinute(452),
                new Pressure(356e3),
                new Force(201),
                true,
                List.of(),
                Optional.empty());
        OrderedLine line = new OrderedLine(
                "pump-1",
                "left-1",
                "crosslay-1-200",
                "the pump gauge",
                "a night",
                new Pressure(30e3),
                Optional.empty(),
                new Length(100),
                List.of(figure));
        return new HandedPackage(
                line,
                List.of(new HandedHose(
                        "attack-175", new Length(75), new Length(0.045), new Length(25), Optional.empty())),
                new HandedNozzle(
                        "seven-eighths",
                        "19 mm smooth bore",
                        Flow.ofLitresPerMinute(448),
                        new Pressure(350e3),
                        Optional.empty()),
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
