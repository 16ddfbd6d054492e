package org.hosewright.hydraulics.network;

import org.hosewright.hydraulics.error.InvalidInput;

/** A table of scenarios on its way through the lanes; what does not settle there is solved by itself.
 *
 * <p>Whether a table goes abreast hangs on its size alone, so an answer does not hang on its place in the table.
 */
final class Table {
    /** Fewer scenarios than this are sooner solved one by one. */
    private static final int FEW = 16;

    private final Scenarios scenarios;
    private final double[][] values;
    private final int[] links;
    private final double[][] flows;
    private final boolean afresh;
    private final int count;

    /** Takes a table up.
     *
     * @param values one row for each varied number, one column for each scenario
     * @param links the links asked about
     * @param flows takes the answers, one row for each link [m3/s]
     * @param afresh whether each scenario sets out from no answer known before
     * @throws InvalidInput rows or columns that do not fit one another
     */
    Table(Scenarios scenarios, double[][] values, int[] links, double[][] flows, boolean afresh) {
        this.scenarios = scenarios;
        this.values = values;
        this.links = links;
        this.flows = flows;
        this.afresh = afresh;
        require("rows of varied numbers", values.length, scenarios.varied());
        require("rows of flows", flows.length, links.length);
        count = values.length > 0 ? values[0].length : flows.length > 0 ? flows[0].length : 0;
        for (double[] row : values) {
            require("scenarios of a varied number", row.length, count);
        }
        for (double[] row : flows) {
            require("scenarios of a link", row.length, count);
        }
    }

    private static void require(String what, int found, int needed) {
        if (found != needed) {
            throw new InvalidInput(what, Integer.toString(found), Integer.toString(needed), "table");
        }
    }

    boolean isLong() {
        return count >= FEW;
    }

    void solveOneByOne() {
        for (int at = 0; at < count; at++) {
            solve(at);
        }
    }

    void solve(Abreast abreast) {
        for (int from = 0; from < count; from += Abreast.LANES) {
            solve(abreast, from);
        }
    }

    private void solve(Abreast abreast, int from) {
        int end = Math.min(count, from + Abreast.LANES);
        for (int lane = 0; lane < Abreast.LANES; lane++) {
            set(Math.min(end - 1, from + lane));
            scenarios.take(abreast, lane, afresh);
        }
        abreast.run(afresh, lane -> {
            if (from + lane < end) {
                set(from + lane);
                scenarios.give(abreast, lane);
                tell(from + lane);
            }
        });
        for (int at = from; at < end; at++) {
            if (!abreast.isSettled(at - from)) {
                solve(at);
            }
        }
    }

    private void solve(int scenario) {
        set(scenario);
        if (afresh) {
            scenarios.solveAfresh();
        } else {
            scenarios.solve();
        }
        tell(scenario);
    }

    private void set(int scenario) {
        for (int i = 0; i < values.length; i++) {
            scenarios.set(i, values[i][scenario]);
        }
    }

    private void tell(int scenario) {
        for (int k = 0; k < links.length; k++) {
            flows[k][scenario] = scenarios.flow_m3s(links[k]);
        }
    }
}
