package org.hosewright.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Seeded random questions: lines and lays with every law of hose, every kind of tip and appliance, and some that must be refused. */
final class Questions {
    private final Random random;
    private int named;

    Questions(long seed) {
        random = new Random(seed);
    }

    List<String> list(int count) {
        List<String> questions = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            named = 0;
            questions.add(random.nextBoolean() ? line() : lay());
        }
        return questions;
    }

    private String line() {
        return "{\"line\":{\"discharge\":" + discharge("out") + ",\"hose\":" + hose(1 + random.nextInt(4))
                + ",\"nozzle\":" + nozzle(false) + "},\"at\":" + ask() + "}";
    }

    private String lay() {
        String lines = IntStream.range(0, 1 + random.nextInt(3))
                .mapToObj(i -> "{\"discharge\":" + discharge("d" + i) + ",\"leg\":" + leg(random.nextInt(3)) + "}")
                .collect(Collectors.joining(","));
        return "{\"lay\":[" + lines + "],\"at\":" + ask() + "}";
    }

    private String leg(int levels) {
        if (levels == 0) {
            return "{\"hose\":" + hose(1) + ",\"nozzle\":" + nozzle(true) + "}";
        }
        return "{\"hose\":" + hose(1) + ",\"wye\":{"
                + (random.nextBoolean() ? "\"appliance\":" + appliance() + "," : "") + "\"legs\":[" + leg(levels - 1)
                + "," + leg(levels - 1) + "]}}";
    }

    private String hose(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> "{\"id\":\"hose-" + i + "\",\"diameter\":\"1 3/4 in\",\"section\":\"50 ft\"," + loss()
                        + ",\"length\":\"" + number(50, 500)
                        + " ft\",\"rise\":\""
                        + number(-40, 40) + " ft\"}")
                .collect(Collectors.joining(",", "[", "]"));
    }

    /** Of five hoses one goes by Hazen-Williams and one by its roughness. */
    private String loss() {
        return switch (random.nextInt(5)) {
            case 0 -> "\"hazen-williams\":" + number(90, 150);
            case 1 -> "\"roughness\":\"" + number(0, 0.3) + " mm\"";
            default -> "\"loss\":\"" + number(1, 15) + " ± 0.2 psi / 100 ft @ 100 gpm\"";
        };
    }

    private String discharge(String id) {
        return "{\"id\":\"" + id + "\",\"loss\":\"" + number(0, 4) + " ± 0.3 psi @ 100 gpm\"}";
    }

    private String appliance() {
        String loss = random.nextBoolean()
                ? "\"loss\":\"" + number(0, 2) + " psi @ 100 gpm\""
                : "\"allow\":\"10 psi\",\"from\":\"" + number(50, 400) + " gpm\"";
        return "{\"id\":\"wye\"," + loss + ",\"per\":\"" + (random.nextBoolean() ? "leg" : "total") + "\"}";
    }

    private String nozzle(boolean mayBeShut) {
        String id = "{\"id\":\"tip-" + named++ + "\",";
        String shut = mayBeShut && random.nextInt(8) == 0 ? ",\"shut\":true}" : "}";
        return switch (random.nextInt(3)) {
            case 0 -> id + "\"bore\":\"7/8 in\",\"at\":\"50 psi\"" + shut;
            case 1 -> id + "\"rated\":\"" + number(95, 250) + " gpm @ 75 psi\",\"factor\":\"97 %\"" + shut;
            default -> id + "\"holds\":\"100 psi\",\"from\":\"60 gpm\",\"to\":\"200 gpm\"" + shut;
        };
    }

    private String ask() {
        return switch (random.nextInt(3)) {
            case 0 -> "{\"tip\":\"" + number(30, 90) + " psi\"}";
            case 1 -> "{\"flow\":\"" + number(60, 220) + " gpm\"}";
            default -> "{\"pump\":\"" + number(0, 220) + " psi\"}";
        };
    }

    private String number(double low, double high) {
        return String.valueOf(Math.round(100 * (low + (high - low) * random.nextDouble())) / 100.0);
    }
}
