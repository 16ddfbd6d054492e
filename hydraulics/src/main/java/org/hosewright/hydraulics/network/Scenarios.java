package org.hosewright.hydraulics.network;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.error.NotConverged;
import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.law.Square;
import org.hosewright.hydraulics.quantity.Numbers;
import org.jspecify.annotations.Nullable;

/** One network solved many times with other numbers: folded and laid out once, no memory taken per solve.
 *
 * <p>Each scenario sets out from the network's own answer and its tangent, never from the scenario before, so an answer
 * does not hang on the order. Not for several threads at once.
 */
public final class Scenarios {
    private static final int STEPS = 25;

    /** How much a number is moved to find the tangent, as a share of itself [1]. */
    private static final double NUDGE = 1e-6;

    /** The least that a head is moved by to find the tangent [Pa]. */
    private static final double NUDGE_PA = 1;

    private final Network network;
    private final Folded folded;
    private final Newton newton;
    private final boolean[] isHead;
    private final int[] place;
    private final double[] given;
    private final double[] off;
    private final double[][] flowBy;
    private final double[][] headBy;
    private final double[] flow;
    private final double[] head;
    private @Nullable Abreast abreast;

    /** Lays a network out.
     *
     * @param varied the numbers that change: heads of fixed nodes, resistances of square laws, one-way or not
     * @throws InvalidInput as {@link NetworkSolver#solve}, or a number that cannot be varied; it is named
     */
    public Scenarios(Network network, List<Freed> varied) {
        this.network = network;
        Reachable.require(network);
        isHead = new boolean[varied.size()];
        place = new int[varied.size()];
        given = new double[varied.size()];
        folded = new Folded(network, places(varied));
        folded.core().pieces.tabulate();
        folded.load();
        newton = new Newton(folded.core(), 0);
        folded.vary(links());
        NetworkSolver.solve(folded.core(), newton);
        require();
        folded.finish();
        flow = folded.core().flow.clone();
        head = Arrays.copyOf(folded.core().head, folded.core().shape.free());
        off = new double[place.length];
        flowBy = new double[place.length][];
        headBy = new double[place.length][];
        Arrays.fill(flowBy, new double[flow.length]);
        Arrays.fill(headBy, new double[head.length]);
        for (int i = 0; i < place.length; i++) {
            tangent(i);
        }
    }

    /** Looks up what is varied; gives the fixed nodes that must stand for themselves. */
    private boolean[] places(List<Freed> varied) {
        boolean[] apart = new boolean[network.nodes()];
        for (int i = 0; i < place.length; i++) {
            Freed one = varied.get(i);
            isHead[i] = one.isHead();
            place[i] = one.isHead() ? head(one.of()) : square(one);
            given[i] = one.isHead()
                    ? network.head_Pa(place[i])
                    : square(network.law(place[i])).r();
            if (one.isHead()) {
                apart[place[i]] = true;
            }
        }
        return apart;
    }

    /** The links of which a number is varied. */
    private int[] links() {
        return IntStream.range(0, place.length)
                .filter(i -> !isHead[i])
                .map(i -> place[i])
                .toArray();
    }

    /** How the answer moves with one of the varied numbers, where it stands. */
    private void tangent(int varied) {
        double nudge = Math.max(NUDGE * Math.abs(given[varied]), isHead[varied] ? NUDGE_PA : 0);
        set(varied, given[varied] + nudge);
        solve();
        set(varied, given[varied]);
        double[] flows = folded.core().flow.clone();
        double[] heads = Arrays.copyOf(folded.core().head, head.length);
        for (int k = 0; k < flows.length; k++) {
            flows[k] = (flows[k] - flow[k]) / nudge;
        }
        for (int i = 0; i < heads.length; i++) {
            heads[i] = (heads[i] - head[i]) / nudge;
        }
        flowBy[varied] = flows;
        headBy[varied] = heads;
    }

    /** The number of a link, for {@link #flow_m3s}. */
    public int link(String name) {
        return network.linkAt(name);
    }

    /** The number of a node, for {@link #head_Pa}. */
    public int node(String name) {
        return network.nodeAt(name, "");
    }

    /** Changes one of the varied numbers for the solves to come [Pa or Pa s2/m6]. */
    public void set(int varied, double value) {
        off[varied] = value - given[varied];
        if (isHead[varied]) {
            folded.setHead(place[varied], Numbers.requireFinite("head", value));
        } else {
            folded.setSquare(place[varied], Numbers.requirePositive("resistance", value));
        }
    }

    /** Solves with the numbers as set.
     *
     * @throws NotConverged no answer; the worst link is named
     */
    public void solve() {
        folded.reload();
        Iterate at = folded.core();
        if (at.shape.free() == 0) {
            newton.start();
        } else {
            setOut(at);
            newton.resume(STEPS);
        }
        finish(at);
    }

    /** The same from no answer known before, as a network by itself is solved: slower, and a check on {@link #solve}.
     *
     * @throws NotConverged no answer; the worst link is named
     */
    public void solveAfresh() {
        folded.reload();
        newton.start();
        newton.run(STEPS);
        finish(folded.core());
    }

    private void finish(Iterate at) {
        if (!newton.isSettled()) {
            NetworkSolver.solve(at, newton);
            require();
        }
        newton.shut();
        folded.finish();
    }

    /** From the network's own answer along its tangent. */
    private void setOut(Iterate at) {
        System.arraycopy(head, 0, at.head, 0, head.length);
        System.arraycopy(flow, 0, at.flow, 0, flow.length);
        for (int i = 0; i < off.length; i++) {
            if (off[i] != 0) {
                along(at.flow, flowBy[i], off[i]);
                along(at.head, headBy[i], off[i]);
            }
        }
    }

    private static void along(double[] moved, double[] by, double off) {
        for (int k = 0; k < by.length; k++) {
            moved[k] += by[k] * off;
        }
    }

    /** Solves a table of scenarios, many abreast: faster by far than one by one.
     *
     * @param values one row for each varied number, one column for each scenario
     * @param links the links asked about
     * @param flows takes the answers, one row for each link [m3/s]
     * @throws InvalidInput rows or columns that do not fit one another
     * @throws NotConverged no answer; the worst link is named
     */
    public void solve(double[][] values, int[] links, double[][] flows) {
        solve(new Table(this, values, links, flows, false));
    }

    /** The same, each scenario from no answer known before. */
    public void solveAfresh(double[][] values, int[] links, double[][] flows) {
        solve(new Table(this, values, links, flows, true));
    }

    private void solve(Table table) {
        if (table.isLong() && Abreast.suits(folded.core())) {
            abreast = abreast == null ? new Abreast(folded.core()) : abreast;
            table.solve(abreast);
        } else {
            table.solveOneByOne();
        }
    }

    /** Puts the scenario as set into a lane. */
    void take(Abreast lanes, int lane, boolean afresh) {
        folded.reload();
        lanes.take(lane, folded.varied());
        if (!afresh) {
            setOut(folded.core());
            lanes.takeIterate(lane);
        }
    }

    /** Takes a lane's answer to the scenario as set. */
    void give(Abreast lanes, int lane) {
        folded.reload();
        lanes.give(lane);
        folded.finish();
    }

    /** How many numbers are varied. */
    int varied() {
        return place.length;
    }

    /** Flow of a link in the last solve [m3/s]. */
    public double flow_m3s(int link) {
        return folded.flow_m3s(link);
    }

    /** Head of a node in the last solve [Pa]. */
    public double head_Pa(int node) {
        return folded.head_Pa(node);
    }

    private void require() {
        if (!newton.isSettled()) {
            String worst = network.linkName(folded.linkOf(newton.worst()));
            throw new NotConverged("The network found no balance of flows.", worst);
        }
    }

    private int head(String name) {
        int node = network.nodeAt(name, "varied");
        if (!network.isFixed(node)) {
            throw new InvalidInput("node varied", name, "a node of fixed head", "network");
        }
        return node;
    }

    private int square(Freed varied) {
        int link = network.linkAt(varied.of());
        if (!(forward(network.law(link)) instanceof Square) || varied.coefficient() != 0) {
            throw new InvalidInput("link varied", varied.of(), "a link with a square law", "network");
        }
        return link;
    }

    private static Square square(Law law) {
        return (Square) forward(law);
    }

    private static Law forward(Law law) {
        return law instanceof OneWay one ? one.forward() : law;
    }
}
