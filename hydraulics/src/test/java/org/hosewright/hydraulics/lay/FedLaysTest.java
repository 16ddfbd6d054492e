package org.hosewright.hydraulics.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Engine;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.Supply.Feed;
import org.hosewright.hydraulics.lay.Supply.SupplyHose;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.LimitKind;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.hydraulics.quantity.Temperature;
import org.hosewright.hydraulics.quantity.Unit;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.hydraulics.quantity.Volume;
import org.hosewright.hydraulics.supply.HydrantCurve;
import org.junit.jupiter.api.Test;

/** Lays that are fed: hydrant, two lines, tank, draft, relay, and what happens when one thing changes. */
class FedLaysTest {
    /** The examples' bands [psi, gpm]. */
    private static final double BAND = 1;

    private static final Ask FIFTY = new Ask.AtTip(Pressure.ofPsi(50));
    private static final Source HYDRANT =
            new Source.Hydrant(new HydrantCurve(Pressure.ofPsi(62), Pressure.ofPsi(44), Flow.ofGpm(890)));

    private static Supply supply(Source source, double keep, Run... runs) {
        return new Supply(List.of(new Feed(source, List.of(new SupplyHose(List.of(runs))))), Pressure.ofPsi(keep));
    }

    private static Run ldh(double feet, double rise) {
        return Lays.run("supply-4", 4, 0.2, feet, rise);
    }

    private static Engine engine(String id) {
        return new Engine(
                id, Optional.of(Flow.ofGpm(1500)), Optional.of(Pressure.ofPsi(250)), Optional.empty(), Map.of());
    }

    private static Lay fed(Supply supply) {
        return Lays.gardenCourt(false).withSupply(Optional.of(supply));
    }

    /** The garden court's hydrant with 650 ft of 4 in, 12 ft up: the examples' expected numbers for C of 0.2 scaled. */
    @Test
    void hydrantHolds() {
        Supply one = supply(HYDRANT, 20, ldh(650, 12));
        LayState state = LaySolver.solve(fed(one), FIFTY);
        Intake intake = state.intake().orElseThrow();
        double flow = state.flow().gpm();
        double expected = 62 - 18 * Math.pow(flow / 890, 1 / 0.54) - 0.2 * flow * flow / 1e4 * 6.5 - 12 * 0.434;
        assertThat(intake.pressure().psi()).isCloseTo(expected, within(1e-6));
        assertThat(new Feeding(one).intake_Pa(intake.most().cubicMetresPerSecond()))
                .isCloseTo(Pressure.ofPsi(20).pascals(), within(1e-3));
        assertThat(LayLimits.of(state, Bounds.NONE)).anyMatch(limit -> limit.kind() == LimitKind.SUPPLY);
    }

    /** Two like lines from one hydrant lose as one of a quarter; a second source brings more. */
    @Test
    void twoSupplyLinesAgree() {
        SupplyHose hose = new SupplyHose(List.of(ldh(650, 12)));
        Supply twice = new Supply(List.of(new Feed(HYDRANT, List.of(hose, hose))), Pressure.ofPsi(20));
        Supply quarter = supply(HYDRANT, 20, Lays.run("quarter", 4, 0.05, 650, 12));
        double q = Flow.ofGpm(600).cubicMetresPerSecond();
        assertThat(new Feeding(twice).intake_Pa(q)).isCloseTo(new Feeding(quarter).intake_Pa(q), within(1e-3));
        Feed feed = new Feed(HYDRANT, List.of(hose));
        Supply both = new Supply(List.of(feed, feed), Pressure.ofPsi(20));
        Supply single = new Supply(List.of(feed), Pressure.ofPsi(20));
        assertThat(new Feeding(both).most().flow_m3s())
                .isCloseTo(2 * new Feeding(single).most().flow_m3s(), within(1e-9));
    }

    /** Relay in 2 1/2 in, 250 gpm, 200 psi to 20 psi: 1,440 ft (IFSTA table, from memory). */
    @Test
    void relayMatchesPublished() {
        Source.Pumper pumper =
                new Source.Pumper(engine("engine-41"), Lays.discharge("ldh", 0), Optional.empty(), supply(HYDRANT, 20));
        Supply relay = supply(pumper, 20, Lays.run("h", 2.5, 2, 1440, 0));
        Intake at = Intake.of(relay, Flow.ofGpm(250));
        assertThat(at.pressure().psi()).isCloseTo(20, within(1e-6));
        assertThat(at.pumps()).hasSize(1);
        assertThat(at.pumps().get(0).pump().psi()).isCloseTo(200, within(1e-6));
        assertThat(at.hoses().get(0).still().psi()).isCloseTo(200, within(1e-6));
    }

    /** An engine cannot pump to itself, be it over another one. */
    @Test
    void relayThatLoopsRefused() {
        Source.Pumper last =
                new Source.Pumper(engine("engine-42"), Lays.discharge("ldh", 0), Optional.empty(), supply(HYDRANT, 20));
        Source.Pumper first =
                new Source.Pumper(engine("engine-41"), Lays.discharge("ldh", 0), Optional.empty(), supply(last, 20));
        Supply relay = supply(first, 20, ldh(500, 0));
        assertThatThrownBy(() -> relay.requireNoLoop("engine-42"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("engine-42");
        relay.requireNoLoop("engine-43");
    }

    /** Tank minutes count nine tenths of the level and what the piping lets through. */
    @Test
    void safety16TankMinutesHold() {
        Source tank = new Source.Tank(Volume.ofGallons(750), PointLoss.ofUs(0.4), Optional.of(Flow.ofGpm(300)));
        LayState state = LaySolver.solve(fed(supply(tank, 20)), FIFTY);
        Intake intake = state.intake().orElseThrow();
        double minutes = intake.tank().orElseThrow().lasts().seconds() / 60;
        assertThat(state.flow().gpm()).isGreaterThan(300);
        assertThat(minutes).isCloseTo(0.9 * 750 / 300, within(1e-6));
        assertThat(intake.most().gpm()).isCloseTo(300, within(1e-6));
        List<Limit> limits = LayLimits.of(state, Bounds.NONE);
        assertThat(limits).anyMatch(limit -> limit.kind() == LimitKind.SUPPLY && limit.broken());
    }

    /** Lifting water: 10 ft are 4.34 psi; higher and warmer places allow less. */
    @Test
    void draftHolds() {
        Run suction = Lays.run("suction-6", 6, 0.05, 20, 0);
        Supply low = supply(draft(10, 0, 60), 20, suction);
        Intake still = Intake.of(low, new Flow(0));
        assertThat(still.pressure().psi()).isCloseTo(-4.34, within(1e-6));
        Intake high = Intake.of(supply(draft(10, 5000, 60), 20, suction), Flow.ofGpm(1000));
        Intake warm = Intake.of(supply(draft(10, 0, 100), 20, suction), Flow.ofGpm(1000));
        Intake sea = Intake.of(low, Flow.ofGpm(1000));
        assertThat(high.most().gpm()).isLessThan(sea.most().gpm());
        assertThat(warm.most().gpm()).isLessThan(sea.most().gpm());
        LayState state = LaySolver.solve(fed(supply(draft(24, 0, 60), 20, suction)), FIFTY);
        assertThat(LayCautions.list(state, FIFTY, Bounds.NONE, UnitSystem.US))
                .anyMatch(say -> say.startsWith("The pump would have to lift"));
    }

    private static Source draft(double lift, double altitude, double fahrenheit) {
        return new Source.Draft(
                Length.ofFeet(lift), PointLoss.ofUs(0.04), Length.ofFeet(altitude), Temperature.of(fahrenheit, Unit.F));
    }

    /** The examples' expected numbers: at 145 psi b shuts, a gets 180 gpm; a fixed speed lets the pump rise further. */
    @Test
    void safety05WhatIfMatchesPractice() {
        Lay lay = fed(supply(HYDRANT, 20, ldh(650, 12)));
        LayState before = LaySolver.solve(lay, FIFTY);
        WhatIf shuts = WhatIf.turned(lay, before, "b");
        assertThat(shuts.says()).isEqualTo("b shuts");
        assertThat(shuts.then().getTip("a").state().flow().gpm()).isCloseTo(180, within(BAND));
        assertThat(shuts.then().pump().psi()).isCloseTo(before.pump().psi(), within(1e-9));
        double intake = before.intake().orElseThrow().pressure().psi();
        assertThat(shuts.then().intake().orElseThrow().pressure().psi()).isGreaterThan(intake);
        Lay fixed = lay.withPump(new PumpMode.FixedSpeed(before.pump(), before.flow(), Flow.ofGpm(1500)));
        LayState slides = WhatIf.turned(fixed, before, "b").then();
        assertThat(slides.pump().psi()).isGreaterThan(before.pump().psi() + 5);
        LayState same = LaySolver.solve(fixed, new Ask.AtPump(before.pump()));
        assertThat(same.flow().gpm()).isCloseTo(before.flow().gpm(), within(1e-6));
    }

    /** Whatever goes wrong on the way to a tip, that tip gets less and the other one no less. */
    @Test
    void whatGoesWrongHolds() {
        Lay lay = fed(supply(HYDRANT, 20, ldh(650, 12)));
        LayState before = LaySolver.solve(lay, FIFTY);
        List<WhatIf> wrong = new ArrayList<>();
        wrong.add(WhatIf.kinked(lay, before, "a", PointLoss.ofUs(10)));
        wrong.add(WhatIf.gated(lay, before, "a", HalfGate.of(Length.ofInches(2.5))));
        for (WhatIf one : wrong) {
            assertThat(one.then().getTip("a").state().flow().gpm())
                    .as(one.says())
                    .isLessThan(155);
            assertThat(one.then().getTip("b").state().flow().gpm())
                    .as(one.says())
                    .isGreaterThan(161);
        }
        WhatIf burst = WhatIf.burst(lay, before, "a", 2);
        assertThat(burst.then().getTip("b").state().flow().gpm()).isLessThan(155);
        assertThat(burst.then().parts().bursts()).hasSize(1);
        WhatIf tip = WhatIf.tip(lay, before, "a", before.getTip("b").outlet().nozzle(), "");
        assertThat(tip.then().flow().gpm()).isCloseTo(before.flow().gpm(), within(1e-9));
        WhatIf weak = WhatIf.weakerHydrant(lay, before, new Ratio(0.5));
        assertThat(weak.then().intake().orElseThrow().pressure().psi())
                .isLessThan(before.intake().orElseThrow().pressure().psi());
        assertThat(weak.then().flow()).isEqualTo(before.flow());
    }
}
