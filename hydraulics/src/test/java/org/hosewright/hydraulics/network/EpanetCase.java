package org.hosewright.hydraulics.network;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hosewright.hydraulics.network.law.Law;

/** One network that the reference solved: ours built from the same numbers, beside the reference's heads and flows. */
final class EpanetCase {
    private final String name;
    private final boolean darcyWeisbach;
    private final boolean shut;
    private final Network network = new Network();
    private final Map<String, Double> heads_ft = new TreeMap<>();
    private final Map<String, Double> flows_gpm = new TreeMap<>();
    private int nodes;
    private int links;

    private EpanetCase(String[] head) {
        name = "network " + head[1] + ", " + head[2] + " of " + head[4] + " nodes, " + head[3];
        darcyWeisbach = head[3].equals("D-W");
        shut = head[6].equals("shut");
    }

    /** The cases of a file as bench/reference/case-text.mjs describes it. */
    static List<EpanetCase> listIn(String text) {
        List<EpanetCase> cases = new ArrayList<>();
        for (String line : text.lines().toList()) {
            String[] cells = line.split(" ", -1);
            if (cells[0].equals("case")) {
                cases.add(new EpanetCase(cells));
            } else if (!cells[0].equals("#")) {
                cases.get(cases.size() - 1).add(cells);
            }
        }
        return cases;
    }

    Network network() {
        return network;
    }

    /** True where a tip is dry or a pump pushed shut. */
    boolean isShut() {
        return shut;
    }

    Map<String, Double> heads_ft() {
        return heads_ft;
    }

    Map<String, Double> flows_gpm() {
        return flows_gpm;
    }

    @Override
    public String toString() {
        return name;
    }

    /** A file of the tests beside this class. */
    static String resource(String name) {
        try (var in = EpanetCase.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(name, broken);
        }
    }

    private void add(String[] cells) {
        double[] numbers = new double[cells.length];
        for (int i = 1; i < cells.length; i++) {
            numbers[i] = Double.parseDouble(cells[i]);
        }
        switch (cells[0]) {
            case "r" -> network.fixed("N" + nodes++, EpanetUnits.head_Pa(numbers[1]));
            case "j" -> junction(numbers);
            case "t" -> tip(numbers);
            default -> link((int) numbers[1], (int) numbers[2], law(cells[0], numbers), numbers[cells.length - 1]);
        }
    }

    private void junction(double[] numbers) {
        String node = "N" + nodes++;
        network.free(node).demand(node, EpanetUnits.flow_m3s(numbers[2]));
        heads_ft.put(node, numbers[3]);
    }

    private void tip(double[] numbers) {
        String node = "N" + nodes++;
        network.free(node).fixed(node + "-air", EpanetUnits.head_Pa(numbers[1]));
        network.link(node + "-tip", node, node + "-air", EpanetUnits.tip(numbers[2]));
        heads_ft.put(node, numbers[3]);
        flows_gpm.put(node + "-tip", numbers[4]);
    }

    private void link(int from, int to, Law law, double flow_gpm) {
        String link = "L" + links++;
        network.link(link, "N" + from, "N" + to, law);
        flows_gpm.put(link, flow_gpm);
    }

    private Law law(String kind, double[] numbers) {
        return switch (kind) {
            case "h" -> EpanetUnits.hose(numbers[3], numbers[4]);
            case "u" -> EpanetUnits.pump(numbers[3], numbers[4], numbers[5], numbers[6], numbers[7]);
            default ->
                darcyWeisbach
                        ? EpanetUnits.darcyWeisbach(numbers[3], numbers[4], numbers[5], numbers[6])
                        : EpanetUnits.hazenWilliams(numbers[3], numbers[4], numbers[5], numbers[6]);
        };
    }
}
