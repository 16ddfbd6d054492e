package org.hosewright.hydraulics.network;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** One of the example networks as its authority distributes it (US units, Hazen-Williams), at its first time step. */
final class InpNetwork {
    /** As the reference rounds it up [1]. */
    private static final double FOUR_THIRDS = 1.33334;

    private final Map<String, List<String[]>> sections = new LinkedHashMap<>();
    private final Map<String, Double> tankLevels_ft = new LinkedHashMap<>();
    private final Network network = new Network();

    private InpNetwork() {}

    static Network read(Path file) throws IOException {
        InpNetwork inp = new InpNetwork();
        String section = "";
        for (String line : Files.readAllLines(file, StandardCharsets.ISO_8859_1)) {
            String bare = line.replaceFirst(";.*", "").trim();
            if (bare.startsWith("[")) {
                section = bare;
            } else if (!bare.isEmpty()) {
                inp.sections.computeIfAbsent(section, any -> new ArrayList<>()).add(bare.split("\\s+", -1));
            }
        }
        inp.addNodes();
        inp.addLinks();
        return inp.network;
    }

    private void addNodes() {
        for (String[] row : rows("[RESERVOIRS]")) {
            network.fixed(row[0], EpanetUnits.head_Pa(number(row[1])));
        }
        for (String[] row : rows("[TANKS]")) {
            network.fixed(row[0], EpanetUnits.head_Pa(number(row[1]) + number(row[2])));
            tankLevels_ft.put(row[0], number(row[2]));
        }
        for (String[] row : rows("[JUNCTIONS]")) {
            network.free(row[0]);
        }
        Map<String, Boolean> drawn = new LinkedHashMap<>();
        for (String[] row : rows("[DEMANDS]")) {
            drawn.put(row[0], true);
            draw(row[0], row[1], row.length > 2 ? row[2] : "1");
        }
        for (String[] row : rows("[JUNCTIONS]")) {
            if (!drawn.containsKey(row[0]) && row.length > 2) {
                draw(row[0], row[2], row.length > 3 ? row[3] : "1");
            }
        }
    }

    private void draw(String node, String base_gpm, String pattern) {
        String[] first = rows("[PATTERNS]").stream()
                .filter(row -> row[0].equals(pattern))
                .findFirst()
                .orElse(new String[] {pattern, "1"});
        network.demand(node, EpanetUnits.flow_m3s(number(base_gpm) * number(first[1])));
    }

    private void addLinks() {
        for (String[] row : rows("[PIPES]")) {
            double minor = row.length > 6 ? number(row[6]) : 0;
            if (isOpen(row[0], row.length > 7 ? row[7] : "Open")) {
                network.link(
                        row[0],
                        row[1],
                        row[2],
                        EpanetUnits.hazenWilliams(number(row[3]), number(row[4]), number(row[5]), minor));
            }
        }
        for (String[] row : rows("[PUMPS]")) {
            List<String[]> curve = rows("[CURVES]").stream()
                    .filter(point -> point[0].equals(row[4]))
                    .toList();
            if (isOpen(row[0], "Open")) {
                network.link(row[0], row[1], row[2], EpanetUnits.pump(threePoints(curve)));
            }
        }
    }

    /** Head at no flow, then flow and head twice; of one point the head at no flow is 4/3, and none at twice the flow. */
    private static double[] threePoints(List<String[]> curve) {
        if (curve.size() == 1) {
            double flow = number(curve.get(0)[1]);
            double head = number(curve.get(0)[2]);
            return new double[] {FOUR_THIRDS * head, flow, head, 2 * flow, 0};
        }
        return new double[] {
            number(curve.get(0)[2]),
            number(curve.get(1)[1]),
            number(curve.get(1)[2]),
            number(curve.get(2)[1]),
            number(curve.get(2)[2])
        };
    }

    /** Whether a link is open when the clock starts: its own state, then a tank's level where a control names it. */
    private boolean isOpen(String link, String own) {
        String state = own;
        for (String[] row : rows("[STATUS]")) {
            state = row[0].equals(link) ? row[1] : state;
        }
        for (String[] row : rows("[CONTROLS]")) {
            if (row[1].equals(link) && row[3].equals("IF") && holds(row)) {
                state = row[2];
            }
        }
        return !state.toUpperCase(Locale.ROOT).equals("CLOSED");
    }

    /** LINK id state IF NODE id BELOW level, or ABOVE. */
    private boolean holds(String[] control) {
        double level_ft = tankLevels_ft.get(control[5]);
        double limit_ft = number(control[7]);
        return control[6].equals("BELOW") ? level_ft < limit_ft : level_ft > limit_ft;
    }

    private List<String[]> rows(String section) {
        return sections.getOrDefault(section, List.of());
    }

    private static double number(String cell) {
        return Double.parseDouble(cell);
    }
}
