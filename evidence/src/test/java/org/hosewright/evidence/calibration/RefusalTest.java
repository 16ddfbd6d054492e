package org.hosewright.evidence.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hosewright.evidence.calibration.NightWriter.row;

import java.util.Optional;
import org.hosewright.evidence.calibration.NightWriter.Row;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.night.Night;
import org.hosewright.evidence.night.ReadWith;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.junit.jupiter.api.Test;

/** Readings that cannot be are refused with the reading, the value and what would do; the night before and the row typed alike. */
class RefusalTest {
    private static Row good() {
        return row("12", "attack-175", 350, 0, "seven-eighths", 138, 50, 171);
    }

    private static void refused(Row row, String... said) {
        Night night = ExampleNight.gear(new Tap.Pitot()).rows(row).night();
        assertThatThrownBy(() -> Calibration.of(night))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContainingAll(said);
        Night before = ExampleNight.tapped(new Tap.Pitot()).night();
        assertThatThrownBy(() -> RowCheck.check(before, night.readings().get(0)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContainingAll(said);
    }

    @Test
    void noFlowWithTheNozzleOpenRefused() {
        refused(good().flow(0), "reading 12", "flow", "shut");
    }

    @Test
    void flowWithTheNozzleShutRefused() {
        refused(good().closed(), "reading 12", "171 gpm", "no flow with the nozzle shut");
    }

    @Test
    void moreAtTheTipThanThePumpAllowsRefused() {
        refused(good().pump(50).tip(138), "reading 12", "138 psi", "at most 50 psi", "swapped");
    }

    @Test
    void theFallOfTheGroundCountsHolds() {
        // 60 psi at the tip from 45 at the pump: impossible on level ground, not 40 ft down.
        Row level = row("12", "attack-175", 50, 0, "seven-eighths", 45, 60, -1);
        Row down = row("12", "attack-175", 50, -80, "seven-eighths", 45, 60, -1);
        refused(level, "60 psi", "at most 45 psi");
        Calibration night =
                Calibration.of(ExampleNight.gear(new Tap.Pitot()).rows(down).night());
        assertThat(night.readings()).hasSize(1);
    }

    @Test
    void lessThanFourDeviationsIsWeighedNotRefusedHolds() {
        // Combined deviation of gauge-a and gauge-b about 2.5 psi: 8 psi too many are weighed, 12 are refused.
        Row near = row("12", "attack-175", 50, 0, "seven-eighths", 100, 108, -1).closed();
        Row far = row("12", "attack-175", 50, 0, "seven-eighths", 100, 112, -1).closed();
        Calibration.of(ExampleNight.tapped(new Tap.Pitot()).rows(near).night());
        refused(far, "112 psi", "at most 100 psi");
    }

    @Test
    void neitherTipNorFlowRefused() {
        refused(good().tip(-1).flow(-1), "reading 12", "neither tip nor flow");
    }

    @Test
    void noPressureAtAnOpenTipRefused() {
        refused(good().tip(0), "reading 12", "0 psi", "above 0");
    }

    @Test
    void unknownGearRefused() {
        refused(row("12", "attack-200", 350, 0, "seven-eighths", 138, 50, 171), "attack-200", "one of attack-175");
        refused(row("12", "attack-175", 350, 0, "fog", 138, 50, 171), "fog", "one of seven-eighths");
        ReadWith stranger = new ReadWith(Optional.of("gauge-z"), Optional.empty(), Optional.empty());
        refused(good().with(stranger), "gauge-z", "gauge-a");
        ReadWith meterAsGauge = new ReadWith(Optional.of("meter-1"), Optional.empty(), Optional.empty());
        refused(good().with(meterAsGauge), "meter-1", "pressure gauge");
    }

    @Test
    void aTwiceGivenIdRefused() {
        Night night = ExampleNight.gear(new Tap.Pitot()).rows(good(), good()).night();
        assertThatThrownBy(() -> Calibration.of(night))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("12");
    }

    @Test
    void aWaterwayNarrowerThanTheTipRefused() {
        Night night = ExampleNight.tapped(new Tap.Side(Optional.of(Length.ofInches(0.75))))
                .night();
        assertThatThrownBy(() -> Calibration.of(night))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContainingAll("inside diameter", "0.75 in", "bore");
    }
}
