package org.hosewright.bench;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.hosewright.hydraulics.network.Freed;
import org.hosewright.hydraulics.network.Network;
import org.hosewright.hydraulics.network.Scenarios;

/** Scenarios of one network laid out once: the head of its first node and the loss of its first hose vary. */
final class Batch {
    private final Scenarios scenarios;
    private final double[][] values;
    private final int[] asked;
    private final double[][] flows;

    /** Lays a network out.
     *
     * @param text a case
     * @param count how many scenarios there are
     */
    Batch(List<String> text, int count) {
        Case one = Case.of(text, 1);
        Network network = one.network();
        String hose = one.firstHose();
        Freed head = Freed.head("N0");
        scenarios = new Scenarios(network, hose.isEmpty() ? List.of(head) : List.of(head, Freed.coefficient(hose, 0)));
        values = new double[hose.isEmpty() ? 1 : 2][count];
        for (int i = 0; i < count; i++) {
            values[0][i] = one.firstHead_Pa() * Measure.share(i);
            if (!hose.isEmpty()) {
                values[1][i] = network.law(hose).coefficient(0) * Measure.share(i);
            }
        }
        asked = new int[] {scenarios.link("L0")};
        flows = new double[1][count];
    }

    /** A whole table at once. */
    IntToDoubleFunction tables(boolean afresh) {
        return i -> {
            if (afresh) {
                scenarios.solveAfresh(values, asked, flows);
            } else {
                scenarios.solve(values, asked, flows);
            }
            return flows[0][i % flows[0].length];
        };
    }

    /** Scenario by scenario, each from no answer known before. */
    IntToDoubleFunction oneByOne() {
        return i -> {
            for (int v = 0; v < values.length; v++) {
                scenarios.set(v, values[v][i % values[v].length]);
            }
            scenarios.solveAfresh();
            return scenarios.flow_m3s(asked[0]);
        };
    }
}
