package org.hosewright.files.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hosewright.files.Examples;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.LimitKind;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.LayReport;
import org.junit.jupiter.api.Test;

/** What keeps people from harm at a lay, from its file to its result; each test bears its requirement's number. */
class LaySafetyTest {
    private static final String WYE = """
            engine: engine-42
            lines:
              - discharge: rear-3
                hose: 400 ft leader-3
                rise: 0 ft
                wye:
                  appliance: gated-wye
                  legs:
                    a: { hose: 200 ft attack-175, rise: 0 ft, nozzle: seven-eighths }
                    b: { hose: 200 ft attack-175, rise: 0 ft, nozzle: seven-eighths }
            ask: { tip: 50 psi }
            """;

    private final Kit kit = KitDocument.of(
                    Examples.text("hill-road.kit.yaml")
                            .replace(
                                    "nozzles:\n",
                                    "nozzles:\n  auto-100: { kind: automatic, holds: 100 psi, from: 60 gpm, to: 200 gpm }\n")
                            .replace("discharges:\n", "discharges:\n      rear-5: { size: 3 in }\n"),
                    "kit.yaml")
            .kit();

    private LayReport report(String lay) {
        return LayReport.of(kit, LayFile.readLaid(lay, kit, "lay.yaml"), Optional.empty());
    }

    private static void beforeTheNumber(LayReport report, String says) {
        String json = ResultJson.lay(report)
                .replaceAll("\\n *", "")
                .replace(" : ", ":")
                .replace("[ ", "[")
                .replace("{ ", "{");
        assertThat(json.indexOf(says)).as(says).isBetween(0, json.indexOf("\"pump\":"));
    }

    /** Behind the wye and downhill, shut: 0.434 psi a foot over the pump, against 90 % of 300 and the wye's 250 psi. */
    @Test
    void safety01EveryPieceOfALayIsHeldToTheShutPressure() {
        String down = WYE.replace("400 ft leader-3\n    rise: 0 ft", "400 ft leader-3\n    rise: -250 ft");
        LayReport report = report(down);
        double still = report.pump().value().psi() + 0.434 * 250;
        for (String what : List.of("attack-175, nozzle shut", "leader-3, nozzle shut", "gated-wye, nozzle shut")) {
            Limit limit = report.limits().stream()
                    .filter(one -> one.what().equals(what))
                    .findFirst()
                    .orElseThrow();
            assertThat(limit.at().si() / 6894.757).as(what).isCloseTo(still, within(0.1));
        }
        LayReport tight = report(down.replace("{ tip: 50 psi }", "{ pump: 155 psi }"));
        assertThat(tight.limits().get(0).broken()).isTrue();
        assertThat(tight.limits().get(0).what()).isEqualTo("gated-wye, nozzle shut");
        beforeTheNumber(tight, "\"broken\":[{\"what\":\"gated-wye, nozzle shut\"");
        assertThat(report(down.replace("{ tip: 50 psi }", "{ pump: 135 psi }")).cautions())
                .anyMatch(say -> say.contains("pressure control may let the pressure rise by 30 psi"));
    }

    /** Wherever lines hang together: outlets of a standpipe, legs behind a siamese, a line that is shut. */
    @Test
    void safety05LinesThatHangTogetherAreSaidBeforeTheNumber() {
        LayReport pipe = report(Examples.text("hill-road.standpipe.lay.yaml"));
        assertThat(pipe.secondSays()).hasSize(2);
        assertThat(pipe.secondSays().get(0)).startsWith("If fourth shuts").contains("fifth gets");
        String manifold = Examples.text("hill-road.siamese.lay.yaml")
                .replace(
                        "monitor: { appliance: deck-gun, rise: 3 ft, nozzle: gun-tip }",
                        "manifold: { legs: { a: { hose: 200 ft attack-175, rise: 0 ft, nozzle: seven-eighths },"
                                + " b: { hose: 200 ft attack-175, rise: 0 ft, nozzle: seven-eighths } } }")
                .replace("tip: 80 psi", "tip: 50 psi");
        assertThat(report(manifold).secondSays().get(1))
                .startsWith("If b shuts")
                .contains("a gets");
        assertThat(report(Examples.text("hill-road.siamese.lay.yaml")).secondSays())
                .isEmpty();
        String shut = WYE.replace(
                "ask:",
                "  - { discharge: crosslay-1, hose: 4 x attack-175, rise: 0 ft, nozzle: seven-eighths, shut: true }\nask:");
        assertThat(report(shut).secondSays())
                .anyMatch(say -> say.startsWith("If crosslay-1 opens") && say.contains("crosslay-1 gets"));
        beforeTheNumber(report(shut), "\"turned\":\"crosslay-1\"");
    }

    /** At a pump that keeps its speed every line feels the other, and the sentence says what the pump then gives. */
    @Test
    void safety05FixedSpeedIsSaid() {
        String fixed =
                WYE.replace("{ tip: 50 psi }", "{ pump: 150 psi }\npump: { speed: fixed, at: 150 psi, flow: 320 gpm }");
        assertThat(report(fixed).secondSays().get(0))
                .startsWith("If a shuts with the pump left at its speed, which gives 1")
                .doesNotContain("left at 150 psi");
    }

    /** At a fixed speed the pump rises when everything shuts: hose and nozzle are held to the top of its curve. */
    @Test
    void safety01FixedSpeedIsHeldToThePressureWithEverythingShut() {
        String fixed =
                WYE.replace("{ tip: 50 psi }", "{ pump: 150 psi }\npump: { speed: fixed, at: 150 psi, flow: 320 gpm }");
        LayReport report = report(fixed);
        double share = 320.0 / 1500;
        double shut_psi = 150 + 30 * share * share;
        assertThat(report.state().shutPump().psi()).isCloseTo(shut_psi, within(0.01));
        assertThat(report.limits().stream()
                        .filter(limit -> limit.what().equals("leader-3, nozzle shut"))
                        .map(limit -> ((Pressure) limit.at()).psi()))
                .allSatisfy(at_psi -> assertThat(at_psi).isCloseTo(shut_psi, within(0.01)))
                .isNotEmpty();
    }

    /** 1.57 d^2 p at a bore, 0.0505 Q sqrt p at a fog tip, never a third or 0.35 of the flow. */
    @Test
    void safety10ReactionIsExactAtEveryTip() {
        String mixed = WYE.replace(
                "b: { hose: 200 ft attack-175, rise: 0 ft, nozzle: seven-eighths",
                "b: { hose: 200 ft attack-175, rise: 0 ft, nozzle: foam-95");
        LayReport report = report(mixed);
        var bore = report.state().getTip("a").state();
        double p = bore.tip().psi();
        assertThat(bore.reaction().lbf()).isCloseTo(1.57 * 0.875 * 0.875 * p, within(0.05));
        assertThat(bore.reaction().lbf())
                .isGreaterThan(1.05 * 0.35 * bore.flow().gpm());
        var fog = report.state().getTip("b").state();
        assertThat(fog.reaction().lbf())
                .isCloseTo(0.0505 * fog.flow().gpm() * Math.sqrt(fog.tip().psi()), within(0.05));
        assertThat(report(WYE.replace("{ tip: 50 psi }", "{ tip: 64 psi }"))
                        .secondSays()
                        .get(1))
                .contains("above the company's figure for a crew of 3");
    }

    /** Within its band the pressure of an automatic tip says nothing; beyond it that stands before the number. */
    @Test
    void safety11AutomaticTipOnALayTellsItsSupplyNotItsPressure() {
        String auto = WYE.replace(
                "b: { hose: 200 ft attack-175, rise: 0 ft, nozzle: seven-eighths",
                "b: { hose: 200 ft attack-175, rise: 0 ft, nozzle: auto-100");
        assertThatThrownBy(() -> report(auto.replace("{ tip: 50 psi }", "{ tip: 100 psi }")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("says nothing about the flow");
        LayReport within = report(auto.replace("{ tip: 50 psi }", "{ flow: 120 gpm }"));
        assertThat(within.cautions())
                .anyMatch(say -> say.startsWith("auto-100 holds 100 psi")
                        && say.contains("a good-looking stream may be short of water")
                        && say.contains(Math.round(within.state()
                                        .getTip("b")
                                        .state()
                                        .flow()
                                        .gpm()) + " gpm"));
        LayReport less = report(auto.replace("{ tip: 50 psi }", "{ pump: 145 psi }"));
        LayReport more = report(auto.replace("{ tip: 50 psi }", "{ pump: 165 psi }"));
        assertThat(more.state().getTip("b").state().tip().psi())
                .isCloseTo(less.state().getTip("b").state().tip().psi(), within(1e-6));
        assertThat(more.state().getTip("b").state().flow().gpm())
                .isGreaterThan(less.state().getTip("b").state().flow().gpm() + 5);
        LayReport starved = report(auto.replace("{ tip: 50 psi }", "{ pump: 60 psi }"));
        beforeTheNumber(starved, "Outside its rated band: auto-100 at b");
    }

    /** Above what is posted at its connection a standpipe is a broken limit, said before the number. */
    @Test
    void safety12PostedPressureOfAStandpipeIsHeld() {
        String lay = Examples.text("hill-road.standpipe.lay.yaml").replace("{ tip: 50 psi }", "{ pump: 180 psi }");
        LayReport report = report(lay);
        beforeTheNumber(report, "the posted pressure of the standpipe on rear-3, outlets shut");
        assertThat(report.cautions()).anyMatch(say -> say.contains("pumping harder changes nothing here"));
        String shut = lay.replace(
                "outlet: plain, hose: 150 ft attack-250, nozzle: seven-eighths",
                "outlet: unknown, hose: 150 ft attack-250, nozzle: seven-eighths, shut: true");
        beforeTheNumber(report(shut), "What fourth does when it opens is not known");
        assertThat(report(shut).secondSays()).noneMatch(say -> say.startsWith("If fourth"));
    }

    /** Minutes of the tank as its level and its piping allow; a surge warns and is in no limit. */
    @Test
    void safety16TankAndSurgeOfALay() {
        String tank = WYE.replace(
                "lines:", "supply: { tank: { level: 500 gal, loss: 0.4 psi @ 100 gpm, most: 300 gpm } }\nlines:");
        LayReport report = report(tank);
        assertThat(report.cautions())
                .anyMatch(say -> say.startsWith("The tank lasts 90 s at 300 gpm")
                        && say.contains("a tenth of its level not counted"));
        assertThat(report.limits().get(0).kind()).isEqualTo(LimitKind.SUPPLY);
        assertThat(report.limits().get(0).broken()).isTrue();
        LayReport surge = report(WYE);
        assertThat(surge.cautions()).anyMatch(say -> say.startsWith("Shut slowly") && say.contains("an estimate"));
        assertThat(surge.limits()).noneMatch(Limit::broken);
    }

    /** A hydrant's curve shows its date and goes stale by the company's own interval, which stands in its kit. */
    @Test
    void safety16HydrantTestPastTheCompanysIntervalIsSaidBeforeTheNumber() {
        String yearly = KitDocument.of("hydrant-test: 12 months\n" + Examples.text("hill-road.kit.yaml"), "kit.yaml")
                .text();
        Kit own = KitDocument.of(yearly, "kit.yaml").kit();
        var laid = LayFile.readLaid(Examples.text("hill-road.relay.lay.yaml"), own, "lay.yaml");
        LayReport stale = LayReport.of(own, laid, Optional.of(LocalDate.of(2026, 9, 15)));
        beforeTheNumber(stale, "The hydrant's test of 2025-09-14 is older than the company's 12 months");
        LayReport fresh = LayReport.of(own, laid, Optional.of(LocalDate.of(2026, 9, 14)));
        assertThat(fresh.outside()).isEmpty();
        assertThat(fresh.cautions()).anyMatch(say -> say.startsWith("The hydrant was tested on 2025-09-14"));
        assertThatThrownBy(() -> KitDocument.of(yearly.replace("12 months", "12"), "kit.yaml"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("months or years");
    }

    /** Piping that nobody measured, and an intake that would fall too low, are said before the number. */
    @Test
    void safety17WhatIsNotKnownOrNotThereIsSaidBeforeTheNumber() {
        LayReport piping = report(WYE.replace("discharge: rear-3", "discharge: rear-5"));
        beforeTheNumber(piping, "The piping of rear-5 has never been measured");
        String thirsty = WYE.replace(
                "lines:",
                "supply: { hydrant: { static: 30 psi, residual: 20 psi, at: 300 gpm, tested: 2025-09-14 },"
                        + " hose: 600 ft supply-5, rise: 0 ft, keep: 20 psi }\nlines:");
        LayReport dry = report(thirsty);
        beforeTheNumber(dry, "The intake would stand at");
        beforeTheNumber(dry, "\"kind\":\"supply\"");
        LayReport high = report(WYE.replace("rise: 0 ft\n    wye", "rise: 200 ft\n    wye")
                .replace("{ tip: 50 psi }", "{ pump: 60 psi }"));
        beforeTheNumber(high, "The water does not reach a");
    }
}
