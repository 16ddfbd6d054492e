package org.hosewright.files.lay;

import java.util.Random;

/** Seeded random lay files from the second-due kit, with every piece, supply, gate and damage that the format has. */
final class RandomLays {
    private final Random random;

    RandomLays(long seed) {
        random = new Random(seed);
    }

    /** A lay that asks for a pump pressure, or for what its tips shall have.
     *
     * @param ask what is asked, as the file says it
     */
    String text(String ask) {
        boolean joined = random.nextInt(3) == 0;
        String lines = joined
                ? "[ { discharge: rear-3, " + chain() + "join: deck }, { discharge: rear-4, " + chain()
                        + "join: deck } ]"
                : "[ { discharge: rear-3, " + leg(2, true) + " }, { discharge: rear-4, " + leg(2, false) + " } ]";
        String joins = joined ? "joins: { deck: { " + pick("appliance: siamese, ", "") + leg(1, false) + " } }\n" : "";
        String supply = random.nextInt(3) == 0 ? "" : "supply: " + supply() + "\n";
        return "engine: engine-42\n" + supply + "lines: " + lines + "\n" + joins + "ask: { " + ask + " }\n";
    }

    private String chain() {
        String hose = pick("attack-250", "leader-3", "attack-175");
        return "hose: " + 50 * (1 + random.nextInt(6)) + " ft " + hose + ", rise: 6 ft, "
                + (random.nextInt(5) == 0 ? "gate: " + pick("half", "12 psi @ 100 gpm") + ", " : "");
    }

    private String leg(int levels, boolean mayBreak) {
        String damage = mayBreak && random.nextInt(4) == 0
                ? "damage: " + pick("{ burst: 1 }", "{ kink: 10 psi @ 100 gpm }") + ", "
                : "";
        return chain() + damage + end(levels);
    }

    private String end(int levels) {
        int kind = random.nextInt(levels > 0 ? 8 : 3);
        return switch (kind) {
            case 0 -> "nozzle: seven-eighths" + pick("", ", shut: true", ", crew: 2");
            case 1 -> "sprinklers: { k: 5.6 gpm, heads: 3 }";
            case 2 -> pick("hose-end: true", "nozzle: foam-95", "nozzle: seven-eighths");
            case 3 ->
                "wye: { " + pick("appliance: gated-wye, ", "") + "legs: { a: { " + leg(levels - 1, false) + " }, b: { "
                        + leg(levels - 1, false) + " } } }";
            case 4 ->
                "monitor: { " + pick("appliance: deck-gun, ", "")
                        + "rise: 3 ft, tips: { top: { nozzle: gun-tip }, low: { nozzle: seven-eighths } } }";
            case 5 ->
                "standpipe: { rise: 30 ft, loss: 1 psi @ 100 gpm, posted: 175 psi, outlets: { fourth: { outlet: "
                        + valve() + ", " + leg(0, false) + " }, fifth: { outlet: " + valve() + ", "
                        + leg(levels - 1, false) + " } } }";
            case 6 ->
                "pressure-reducer: { holds: " + (40 + random.nextInt(90)) + " psi, " + leg(levels - 1, false) + " }";
            default -> "eductor: { rated: 95 gpm @ 200 psi, draws: 3 %, concentrate: 5 gal, " + leg(0, false) + " }";
        };
    }

    private String valve() {
        return pick(
                "plain",
                "{ fixed-reducer: 90 psi }",
                "{ adjustable-reducer: " + (50 + random.nextInt(60)) + " psi }",
                "{ restrictor: 15 psi @ 100 gpm }");
    }

    private String supply() {
        return switch (random.nextInt(5)) {
            case 0 -> "{ tank: { level: 750 gal, loss: 10 psi @ 500 gpm, most: 500 gpm } }";
            case 1 -> "{ draft: { lift: 10 ft, hose: 20 ft suction-6, strainer: 1 psi @ 500 gpm } }";
            case 2 -> "{ " + hydrant() + ", keep: 20 psi, " + relay("") + " }";
            case 3 ->
                "{ keep: 20 psi, lines: [ { " + hydrant() + " }, { " + hydrant() + ", " + relay(", pump: 90 psi")
                        + " } ] }";
            default -> "{ " + hydrant() + ", keep: 20 psi }";
        };
    }

    private String hydrant() {
        return "hydrant: { static: " + (45 + random.nextInt(40)) + " psi, residual: " + (20 + random.nextInt(20))
                + " psi, at: " + (400 + random.nextInt(1000)) + " gpm }, hose: 300 ft supply-5, rise: "
                + random.nextInt(20) + " ft";
    }

    private String relay(String pump) {
        return "relay: [ { engine: engine-41, discharge: ldh-1, hose: 600 ft supply-5, rise: 20 ft" + pump + " } ]";
    }

    private String pick(String... of) {
        return of[random.nextInt(of.length)];
    }
}
