package org.hosewright.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Seeded random networks as questions: trees with links across, every law, tips, pumps, demands. */
final class NetworkQuestions {
    private final Random random;

    NetworkQuestions(long seed) {
        random = new Random(seed);
    }

    List<String> list(int count) {
        List<String> questions = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            questions.add(network(3 + random.nextInt(30)));
        }
        return questions;
    }

    private String network(int size) {
        List<String> nodes = new ArrayList<>(List.of("{\"id\":\"n0\",\"head_Pa\":" + number(6e5, 12e5) + "}"));
        List<String> links = new ArrayList<>();
        for (int i = 1; i < size; i++) {
            String demand = random.nextInt(3) == 0 ? ",\"demand_m3s\":" + number(1e-5, 2e-4) : "";
            nodes.add("{\"id\":\"n" + i + "\"" + demand + "}");
            links.add(link(links.size(), "n" + random.nextInt(i), "n" + i, law()));
        }
        for (int extra = random.nextInt(size); extra > 0; extra--) {
            int from = random.nextInt(size);
            int to = (from + 1 + random.nextInt(size - 1)) % size;
            links.add(link(links.size(), "n" + from, "n" + to, law()));
        }
        for (int tips = 1 + random.nextInt(4); tips > 0; tips--) {
            nodes.add("{\"id\":\"air" + tips + "\",\"head_Pa\":" + number(0, 2e5) + "}");
            String tip = "\"oneWay\":true,\"square\":" + number(4e9, 8e10);
            links.add(link(links.size(), "n" + (1 + random.nextInt(size - 1)), "air" + tips, tip));
        }
        return "{\"network\":{\"nodes\":[" + String.join(",", nodes) + "],\"links\":[" + String.join(",", links)
                + "]}}";
    }

    private static String link(int id, String from, String to, String law) {
        return "{\"id\":\"l" + id + "\",\"from\":\"" + from + "\",\"to\":\"" + to + "\"," + law + "}";
    }

    private String law() {
        return switch (random.nextInt(8)) {
            case 0, 1, 2 -> "\"square\":" + number(1e8, 5e9);
            case 3, 4 -> "\"power\":{\"r\":" + number(1e7, 2e9) + ",\"n\":1.852,\"m\":" + number(0, 1e8) + "}";
            case 5 ->
                "\"oneWay\":true,\"pump\":{\"shut_Pa\":" + number(1e5, 6e5) + ",\"a\":" + number(1e8, 3e9)
                        + ",\"b\":2}";
            default ->
                "\"pipe\":{\"length_m\":" + number(10, 200) + ",\"diameter_m\":" + number(0.04, 0.15)
                        + ",\"roughness_m\":0.0001,\"fittings\":" + number(0, 5)
                        + ",\"density_kgm3\":998.2,\"viscosity_m2s\":1.004e-6}";
        };
    }

    private double number(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
