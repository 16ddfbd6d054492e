package org.hosewright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.network.Network;
import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.law.Power;
import org.hosewright.hydraulics.network.law.PumpGain;
import org.hosewright.hydraulics.network.law.Square;

/** One network of bench/reference/case-text.mjs with the reference's heads; in the reference's units and constants. */
final class Case {
    static final double PA_PER_PSI = 6894.757293168361;
    static final double PA_PER_FT = 0.4333 * PA_PER_PSI;
    static final double M3S_PER_CFS = 0.3048 * 0.3048 * 0.3048;
    static final double M3S_PER_GPM = M3S_PER_CFS / 448.831;

    private static final double HAZEN_WILLIAMS = 4.727;
    private static final double OF_DIAMETER = 4.871;
    private static final double MINOR = 0.02517;

    /** How much the head of the first node and the loss of the first hose are varied over a batch. */
    private final double share;

    private final Map<String, Double> heads_Pa = new LinkedHashMap<>();
    private final Network network = new Network();
    private int nodes;
    private int links;
    private int hoses;
    private String firstHose = "";
    private double firstHead_Pa;

    private Case(double share) {
        this.share = share;
    }

    static Case read(Path file, double share) throws IOException {
        return of(Files.readAllLines(file), share);
    }

    static Case of(List<String> lines, double share) {
        Case one = new Case(share);
        for (String line : lines) {
            String[] cells = line.split(" ", -1);
            double[] numbers = new double[cells.length];
            for (int i = 1; i < cells.length && !cells[0].equals("case"); i++) {
                numbers[i] = Double.parseDouble(cells[i]);
            }
            one.add(cells[0], numbers);
        }
        return one;
    }

    Network network() {
        return network;
    }

    /** The reference's heads by node [Pa]. */
    Map<String, Double> heads_Pa() {
        return heads_Pa;
    }

    private void add(String kind, double[] numbers) {
        switch (kind) {
            case "case" -> {}
            case "r" -> fixed(numbers[1]);
            case "j" -> junction(numbers);
            case "t" -> tip(numbers);
            default -> link(kind, numbers);
        }
    }

    private void link(String kind, double[] numbers) {
        String name = "L" + links++;
        firstHose = kind.equals("h") && firstHose.isEmpty() ? name : firstHose;
        network.link(name, "N" + (int) numbers[1], "N" + (int) numbers[2], law(kind, numbers));
    }

    /** The name of the first hose's link, whose loss is varied; empty where there is none. */
    String firstHose() {
        return firstHose;
    }

    /** The head of the first node, which is varied [Pa]. */
    double firstHead_Pa() {
        return firstHead_Pa;
    }

    private void fixed(double head_ft) {
        double varied = nodes == 0 ? share : 1;
        firstHead_Pa = nodes == 0 ? head_ft * share * PA_PER_FT : firstHead_Pa;
        network.fixed("N" + nodes++, head_ft * varied * PA_PER_FT);
    }

    private void junction(double[] numbers) {
        String node = "N" + nodes++;
        network.free(node).demand(node, numbers[2] * M3S_PER_GPM);
        heads_Pa.put(node, numbers[3] * PA_PER_FT);
    }

    private void tip(double[] numbers) {
        String node = "N" + nodes++;
        network.free(node).fixed(node + "-air", numbers[1] * PA_PER_FT);
        double k = numbers[2] * M3S_PER_GPM / Math.sqrt(PA_PER_PSI);
        network.link(node + "-tip", node, node + "-air", new OneWay(Square.ofOutlet(k)));
        heads_Pa.put(node, numbers[3] * PA_PER_FT);
    }

    private Law law(String kind, double[] n) {
        return switch (kind) {
            case "h" -> new Square(hose(n[3], n[4] * (hoses++ == 0 ? share : 1)));
            case "u" ->
                new OneWay(PumpGain.through(
                        n[3] * PA_PER_FT, n[5] * PA_PER_FT, n[4] * M3S_PER_GPM, n[7] * PA_PER_FT, n[6] * M3S_PER_GPM));
            default -> pipe(n[3], n[4], n[5]);
        };
    }

    static double hose(double diameter_in, double loss) {
        return MINOR * loss / Math.pow(diameter_in / 12, 4) * PA_PER_FT / (M3S_PER_CFS * M3S_PER_CFS);
    }

    private static Law pipe(double length_ft, double diameter_in, double roughness) {
        double n = Power.HAZEN_WILLIAMS;
        double r = HAZEN_WILLIAMS * length_ft / Math.pow(roughness, n) / Math.pow(diameter_in / 12, OF_DIAMETER);
        return new Power(r * PA_PER_FT / Math.pow(M3S_PER_CFS, n), n);
    }
}
