package org.hosewright.hydraulics.network;

import java.util.Random;
import org.hosewright.hydraulics.network.law.Allowance;
import org.hosewright.hydraulics.network.law.DarcyWeisbach;
import org.hosewright.hydraulics.network.law.HeldTip;
import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.law.Power;
import org.hosewright.hydraulics.network.law.PumpGain;
import org.hosewright.hydraulics.network.law.Square;
import org.hosewright.hydraulics.network.law.Water;

/** Networks drawn by a seed: trees and loops of hose and mains, tips at all heights, pumps, tanks and demands. */
final class RandomNetworks {
    private RandomNetworks() {}

    /** A network of 2 to about {@code most} nodes behind a held pump pressure. */
    static Network of(long seed, int most, double pump_Pa) {
        Random random = new Random(seed);
        int nodes = 1 + random.nextInt(random.nextInt(most) + 1);
        Network network = new Network().fixed("pump", pump_Pa);
        for (int i = 0; i < nodes; i++) {
            network.free("n" + i);
            int back = random.nextBoolean() ? random.nextInt(i + 1) : 1 + random.nextInt(Math.min(i + 1, 3));
            String from = i == 0 ? "pump" : "n" + Math.max(0, Math.min(i - 1, i - back));
            network.link("hose" + i, from, "n" + i, law(random, 8));
        }
        double loops = 0.6 * random.nextDouble();
        for (int i = 0; i < nodes; i++) {
            int other = random.nextInt(nodes);
            if (random.nextDouble() < loops && other != i) {
                network.link("loop" + i, "n" + i, "n" + other, law(random, 10));
            }
            ends(network, i, random);
        }
        return network;
    }

    private static void ends(Network network, int i, Random random) {
        if (random.nextInt(3) == 0) {
            network.fixed("air" + i, (random.nextDouble() - 0.3) * 3e5);
            network.link(
                    "tip" + i, "n" + i, "air" + i, new OneWay(random.nextInt(6) == 0 ? held(random) : tip(random)));
        }
        if (random.nextInt(6) == 0) {
            network.demand("n" + i, 0.002 * random.nextDouble());
        }
        if (random.nextInt(25) == 0) {
            network.fixed("tank" + i, 1e6 * random.nextDouble());
            Law pump = new OneWay(new PumpGain(1e5 + 1e6 * random.nextDouble(), 5e8, 1 + 2 * random.nextDouble()));
            network.link("feed" + i, "tank" + i, "n" + i, random.nextBoolean() ? pump : new Square(1e8));
        }
    }

    private static Law law(Random random, int kinds) {
        double r = Math.pow(10, 8 + 3 * random.nextDouble());
        return switch (random.nextInt(kinds)) {
            case 4 -> new Power(Math.pow(10, 7 + 2.5 * random.nextDouble()), Power.HAZEN_WILLIAMS, 1e7);
            case 5 -> new Power(Math.pow(10, 7 + 2.5 * random.nextDouble()), Power.HAZEN_WILLIAMS);
            case 6 ->
                new DarcyWeisbach(
                        20 + 400 * random.nextDouble(), 0.04 + 0.11 * random.nextDouble(), 1e-4, 1, Water.AT_20_C);
            case 7 ->
                random.nextInt(3) == 0
                        ? new Allowance(5e4 + 1e5 * random.nextDouble(), 0.002 + 0.02 * random.nextDouble())
                        : new Square(r);
            case 8 -> held(random);
            case 9 -> new OneWay(new Square(r));
            default -> new Square(r);
        };
    }

    private static Law tip(Random random) {
        return new Square(Math.pow(10, 9 + 2 * random.nextDouble()));
    }

    private static Law held(Random random) {
        return new HeldTip(5e5 + 3e5 * random.nextDouble(), 0.003, 0.012);
    }
}
