package org.hosewright.ledger.ready;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.ledger.BrindleFalls;
import org.hosewright.ledger.kit.Basis;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.InstrumentRecord;
import org.hosewright.ledger.kit.Kit;
import org.junit.jupiter.api.Test;

/** What a rig's pressures rest on, how old it is, and what is due: last good day and the day after. */
final class RigReadyTest {
    private static final Kit KIT = BrindleFalls.kit(Optional.of(new Tap.BeforePiping()), 0, 150);

    @Test
    void verifiedByWhichNightAndHowOldHolds() {
        RigReady ready = RigReady.of(KIT, "engine-41", BrindleFalls.TODAY);
        assertThat(ready.grounds())
                .containsExactly(
                        new Ground("loss of attack-175", "drill-night", Optional.of(LocalDate.of(2026, 5, 12)), ""),
                        new Ground(
                                "piping of crosslay-1",
                                "",
                                Optional.empty(),
                                "entered by hand, from where is not known"));
        assertThat(ready.grounds().get(0).age_days(BrindleFalls.TODAY)).hasValue(20);
        assertThat(ready.grounds().get(1).age_days(BrindleFalls.TODAY)).isEmpty();
    }

    /** The hose was tested on 11 April 2026, the package flown on 12 May 2026. */
    @Test
    void testIsDueTheDayAfterItsLastGoodDayHolds() {
        assertThat(state("service test of attack-175", LocalDate.of(2027, 3, 11)))
                .isEqualTo(Due.State.IN_DATE);
        assertThat(state("service test of attack-175", LocalDate.of(2027, 3, 12)))
                .isEqualTo(Due.State.SOON);
        assertThat(state("service test of attack-175", LocalDate.of(2027, 4, 11)))
                .isEqualTo(Due.State.SOON);
        assertThat(state("service test of attack-175", LocalDate.of(2027, 4, 12)))
                .isEqualTo(Due.State.OVER);
        assertThat(state("flow test of crosslay-1-200", LocalDate.of(2027, 5, 12)))
                .isEqualTo(Due.State.SOON);
        assertThat(state("flow test of crosslay-1-200", LocalDate.of(2027, 5, 13)))
                .isEqualTo(Due.State.OVER);
    }

    @Test
    void whatTheKitDoesNotSayIsNotKnownHolds() {
        assertThat(state(KIT, "calibration of gauge-a", BrindleFalls.TODAY)).isEqualTo(Due.State.NOT_KNOWN);
        Kit without = BrindleFalls.kit(Optional.empty(), 0, 150);
        assertThat(state(without, "calibration of the panel gauge, which the kit does not name", BrindleFalls.TODAY))
                .isEqualTo(Due.State.NOT_KNOWN);
    }

    @Test
    void bookLossHasNoFlowTestAndOldHoseBelongsOutOfServiceHolds() {
        HoseRecord hose = KIT.hoses().get("attack-175");
        Kit old = withHose(new HoseRecord(
                hose.hose(),
                new Basis(Basis.Kind.BOOK, ""),
                hose.tested(),
                OptionalInt.of(1986),
                hose.coupling(),
                hose.type()));
        RigReady ready = RigReady.of(old, "engine-41", BrindleFalls.TODAY);
        assertThat(ready.grounds().get(0).instead()).isEqualTo("not measured, from the book");
        assertThat(ready.grounds().get(0).isVerified()).isFalse();
        assertThat(state(old, "flow test of crosslay-1-200", BrindleFalls.TODAY))
                .isEqualTo(Due.State.NOT_KNOWN);
        assertThat(state(old, "service test of attack-175", BrindleFalls.TODAY)).isEqualTo(Due.State.OUT_OF_SERVICE);
    }

    @Test
    void calibrationDayIsTakenFromTheKitHolds() {
        InstrumentRecord gauge = KIT.instruments().get("gauge-a");
        Kit dated = withGauge(
                new InstrumentRecord(gauge.instrument(), gauge.offset(), Optional.of(LocalDate.of(2026, 3, 1))));
        assertThat(state(dated, "calibration of gauge-a", LocalDate.of(2027, 3, 1)))
                .isEqualTo(Due.State.SOON);
        assertThat(state(dated, "calibration of gauge-a", LocalDate.of(2027, 3, 2)))
                .isEqualTo(Due.State.OVER);
    }

    private static Due.State state(String what, LocalDate today) {
        return state(KIT, what, today);
    }

    private static Due.State state(Kit kit, String what, LocalDate today) {
        return RigReady.of(kit, "engine-41", today).due().stream()
                .filter(due -> due.what().equals(what))
                .findFirst()
                .orElseThrow()
                .state();
    }

    private static Kit withHose(HoseRecord hose) {
        return with(Map.of("attack-175", hose), KIT.instruments());
    }

    private static Kit withGauge(InstrumentRecord gauge) {
        Map<String, InstrumentRecord> gauges = new LinkedHashMap<>(KIT.instruments());
        gauges.put("gauge-a", gauge);
        return with(KIT.hoses(), gauges);
    }

    private static Kit with(Map<String, HoseRecord> hoses, Map<String, InstrumentRecord> gauges) {
        return new Kit(
                KIT.company(),
                KIT.zone(),
                KIT.units(),
                KIT.crewReaction(),
                hoses,
                KIT.nozzles(),
                KIT.appliances(),
                KIT.engines(),
                gauges,
                KIT.packages(),
                KIT.rule(),
                KIT.reserve(),
                KIT.evidence());
    }
}
