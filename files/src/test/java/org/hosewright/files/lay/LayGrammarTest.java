package org.hosewright.files.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hosewright.files.Examples;
import org.hosewright.files.lay.LaidEnd.Valve;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.kit.Kit;
import org.junit.jupiter.api.Test;

/** Every piece that a lay file can hold, read into what it says. */
class LayGrammarTest {
    private static final String TIP = "hose: 100 ft leader-3, rise: 0 ft, nozzle: seven-eighths";

    private final Kit kit = Examples.kit("garden-court.kit.yaml").kit();

    private LayDocument read(String supply, String end, String joins) {
        String text = "engine: engine-42\nsupply: " + supply + "\nlines: [ { discharge: rear-3, hose: 200 ft leader-3, "
                + end + " } ]\n" + joins + "ask: { tip: 50 psi }\n";
        return LayFile.read(text, kit, "lay.yaml");
    }

    private LaidEnd end(String end) {
        return read("{ hose: 100 ft supply-4 }", end, "").lines().get(0).leg().end();
    }

    private LaidSource.From from(String supply) {
        return read(supply, "nozzle: seven-eighths", "")
                .supply()
                .orElseThrow()
                .from()
                .orElseThrow();
    }

    @Test
    void monitorIsReadHolds() {
        LaidEnd.Monitor two = (LaidEnd.Monitor)
                end(
                        "monitor: { rise: 6 ft, tips: { top: { nozzle: seven-eighths }, low: { nozzle: seven-eighths, shut: true } } }");
        assertThat(two.tips().keySet()).containsExactly("top", "low");
        assertThat(two.tips().get("low").shut()).isTrue();
        assertThat(two.rise().orElseThrow().feet()).isCloseTo(6, within(1e-9));
        assertThat(((LaidEnd.Monitor) end("monitor: { nozzle: seven-eighths }")).tips())
                .hasSize(1);
    }

    @Test
    void standpipeIsReadHolds() {
        LaidEnd.Standpipe pipe =
                (LaidEnd.Standpipe) end("standpipe: { rise: 60 ft, loss: 1 psi @ 100 gpm, posted: 150 psi, outlets: {"
                        + " fourth: { rise: 40 ft, outlet: { fixed-reducer: 90 psi }, hose: 3 x attack-175, nozzle: seven-eighths },"
                        + " fifth: { outlet: unknown, " + TIP.replace("rise: 0 ft, ", "") + " },"
                        + " sixth: { outlet: { adjustable-reducer: 110 psi }, hose-end: true },"
                        + " ninth: { outlet: { restrictor: 15 psi @ 100 gpm }, hose-end: true },"
                        + " tenth: { outlet: plain, hose-end: true } } }");
        assertThat(pipe.posted()).contains(Pressure.ofPsi(150));
        assertThat(pipe.outlets().get("fourth").valve()).isEqualTo(new Valve.FixedReducer(Pressure.ofPsi(90)));
        assertThat(pipe.outlets().get("fourth").rise().orElseThrow().feet()).isCloseTo(40, within(1e-9));
        assertThat(pipe.outlets().get("fifth").valve()).isEqualTo(new Valve.Unknown());
        assertThat(pipe.outlets().get("sixth").valve()).isEqualTo(new Valve.AdjustableReducer(Pressure.ofPsi(110)));
        assertThat(pipe.outlets().get("ninth").valve()).isInstanceOf(Valve.Restrictor.class);
        assertThat(pipe.outlets().get("tenth").valve()).isEqualTo(new Valve.Plain());
    }

    @Test
    void eductorReducerAndSprinklersAreReadHold() {
        LaidEnd.Eductor foam = (LaidEnd.Eductor)
                end("eductor: { rated: 95 gpm @ 200 psi, draws: 3 %, concentrate: 5 gal, " + TIP + " }");
        assertThat(foam.flow().gpm()).isCloseTo(95, within(1e-9));
        assertThat(foam.inlet().psi()).isCloseTo(200, within(1e-9));
        assertThat(foam.draws().value()).isCloseTo(0.03, within(1e-12));
        assertThat(foam.backPressure().value()).isCloseTo(0.65, within(1e-12));
        LaidEnd.Reducer reducer = (LaidEnd.Reducer) end("pressure-reducer: { holds: 90 psi, " + TIP + " }");
        assertThat(reducer.holds()).isEqualTo(Pressure.ofPsi(90));
        LaidEnd.Sprinklers heads = (LaidEnd.Sprinklers) end("sprinklers: { k: 5.6 gpm, heads: 3 }");
        assertThat(heads.heads()).isEqualTo(3);
        assertThat(heads.at()).isEqualTo(Pressure.ofPsi(1));
        LaidEnd.Sprinklers metric = (LaidEnd.Sprinklers) end("sprinklers: { k: 80 L/min }");
        assertThat(metric.at()).isEqualTo(Pressure.ofBar(1));
    }

    @Test
    void gateAndDamageAreReadHold() {
        LayDocument.Leg half = read("{}", "gate: half, nozzle: seven-eighths", "")
                .lines()
                .get(0)
                .leg();
        assertThat(half.gate()).contains(new LayDocument.Gate.Half());
        LayDocument.Leg burst = read("{}", "gate: 12 psi @ 100 gpm, damage: { burst: 3 }, nozzle: seven-eighths", "")
                .lines()
                .get(0)
                .leg();
        assertThat(burst.damage()).contains(new LayDocument.Damage.Burst(3));
        assertThat(burst.gate().orElseThrow()).isInstanceOf(LayDocument.Gate.Takes.class);
    }

    @Test
    void sourcesAreReadHold() {
        LaidSource.Tank tank =
                (LaidSource.Tank) from("{ tank: { level: 750 gal, most: 500 gpm, loss: 10 psi @ 500 gpm } }");
        assertThat(tank.most().orElseThrow().gpm()).isCloseTo(500, within(1e-9));
        LaidSource.Draft draft = (LaidSource.Draft)
                from(
                        "{ draft: { lift: 10 ft, hose: 100 ft supply-4, strainer: 1 psi @ 500 gpm, altitude: 2000 ft, temperature: 68 F } }");
        assertThat(draft.lift().feet()).isCloseTo(10, within(1e-9));
        assertThat(draft.hose()).hasSize(1);
        LaidSource two = read(
                        "{ keep: 20 psi, lines: [ { tank: { level: 750 gal } },"
                                + " { hydrant: { static: 62 psi, residual: 44 psi, at: 890 gpm }, hose: 100 ft supply-4 } ] }",
                        "nozzle: seven-eighths",
                        "")
                .supply()
                .orElseThrow();
        assertThat(two.lines()).hasSize(2);
        assertThat(two.keep()).contains(Pressure.ofPsi(20));
    }

    /** A join that only one line enters, one that nobody describes, and one whose water comes from behind itself. */
    @Test
    void joinsThatCannotBeRefused() {
        refused("join: porch", "joins: { porch: { " + TIP + " } }\n", "two or more lines that end in it");
        refused("join: porch", "", "a join that stands under joins");
        String loop =
                "joins: { porch: { hose: 100 ft leader-3, wye: { legs: { a: { hose: 100 ft leader-3, join: porch }, b: { "
                        + TIP + " } } } } }\n";
        refused("join: porch", loop, "does not lead back into itself");
        String ring =
                "joins: { porch: { hose: 100 ft leader-3, join: yard }, yard: { hose: 100 ft leader-3, join: porch } }\n";
        refused(
                "wye: { legs: { a: { hose: 100 ft leader-3, join: porch }, b: { hose: 100 ft leader-3, join: yard } } }",
                ring,
                "does not lead back into itself");
    }

    private void refused(String end, String joins, String says) {
        assertThatThrownBy(() -> read("{}", end, joins))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("lay.yaml, line ")
                .hasMessageContaining(says);
    }

    @Test
    void namesOfTipsBehindJoinsHold() {
        LayDocument lay = read(
                "{}",
                "wye: { legs: { a: { hose: 100 ft leader-3, join: deck }, b: { hose: 100 ft leader-3, join: deck } } }",
                "joins: { deck: { hose: 100 ft leader-3, monitor: { tips: { top: { nozzle: seven-eighths }, low: { nozzle: seven-eighths } } } } }\n");
        TipNames names = TipNames.of(lay);
        assertThat(List.of(names.get("deck/top"), names.get("deck/low"))).containsExactly("top", "low");
    }
}
