package org.hosewright.hydraulics.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hosewright.hydraulics.quantity.QuantityText.flow;
import static org.hosewright.hydraulics.quantity.QuantityText.hoseLoss;
import static org.hosewright.hydraulics.quantity.QuantityText.length;
import static org.hosewright.hydraulics.quantity.QuantityText.pressure;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.network.Network;
import org.hosewright.hydraulics.network.NetworkSolver;
import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.law.Square;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The list's examples of hose, wyes, siamesed lines, tips, heads and relays, each laid as a network and solved. */
final class ListANetworkTest {
    /** As a share of the answer: a network's heads close to 1e-10 of the largest. */
    private static final double SOLVED = 1e-9;

    private static final Map<String, ToDoubleFunction<Example>> NETWORKS = Map.of(
            "coefficient", ListANetworkTest::hose,
            "wye", ListANetworkTest::wye,
            "parallel", ListANetworkTest::parallel,
            "smooth bore", ListANetworkTest::bore,
            "sprinkler", ListANetworkTest::head,
            "relay", ListANetworkTest::relay,
            "eductor pump", ListANetworkTest::eductor,
            "column pressure", ListANetworkTest::column);

    static Stream<Example> published() {
        return laid().filter(example -> !example.fromMemory());
    }

    static Stream<Example> fromMemory() {
        return laid().filter(Example::fromMemory);
    }

    private static Stream<Example> laid() {
        return Example.listAll().stream().filter(example -> NETWORKS.containsKey(example.rule()));
    }

    @ParameterizedTest
    @MethodSource("published")
    void networkMatchesPublished(Example example) {
        assertMatches(example);
    }

    @ParameterizedTest
    @MethodSource("fromMemory")
    void networkMatchesPractice(Example example) {
        assertMatches(example);
    }

    private static void assertMatches(Example example) {
        double printed = Double.parseDouble(example.answer());
        double answer = NETWORKS.get(example.rule()).applyAsDouble(example);
        assertThat(answer).as(example.source()).isCloseTo(printed, within(example.tolerance() + SOLVED * printed));
    }

    private static Law hose(Example example, String loss, String length) {
        return new Square(hoseLoss(example.input(loss)).value().r()
                * length(example.input(length)).metres());
    }

    private static double psi(double head_Pa) {
        return new Pressure(head_Pa).psi();
    }

    private static double m3s(Example example, String name) {
        return flow(example.input(name)).cubicMetresPerSecond();
    }

    private static Network fromPump() {
        return new Network().fixed("pump", 0).free("end");
    }

    private static double hose(Example example) {
        Network laid = fromPump().link("hose", "pump", "end", hose(example, "loss", "length"));
        return -psi(
                NetworkSolver.solve(laid.demand("end", m3s(example, "flow"))).head_Pa("end"));
    }

    private static double wye(Example example) {
        Law branch = hose(example, "branch", "branch length");
        Network laid = fromPump()
                .link("feed", "pump", "end", hose(example, "loss", "length"))
                .free("a")
                .free("b")
                .link("branch a", "end", "a", branch)
                .link("branch b", "end", "b", branch)
                .demand("a", m3s(example, "flow"))
                .demand("b", m3s(example, "flow"));
        return -psi(NetworkSolver.solve(laid).head_Pa("b"));
    }

    /** 100 gpm through 100 ft of each line side by side lose the coefficient of all of them. */
    private static double parallel(Example example) {
        Network laid = fromPump().demand("end", Flow.ofGpm(100).cubicMetresPerSecond());
        for (String line : example.inputs().keySet()) {
            double r = hoseLoss(example.input(line)).value().r();
            laid.link(line, "pump", "end", new Square(r * Length.ofFeet(100).metres()));
        }
        return -psi(NetworkSolver.solve(laid).head_Pa("end"));
    }

    private static double bore(Example example) {
        double tip_Pa = pressure(example.input("tip")).pascals();
        SmoothBore bore = new SmoothBore(length(example.input("bore")), pressure(example.input("tip")));
        return outlet(tip_Pa, new Square(bore.pressure_Pa(1)));
    }

    private static double head(Example example) {
        double k =
                Flow.ofGpm(Double.parseDouble(example.input("k"))).cubicMetresPerSecond() / Math.sqrt(Constants.PSI_PA);
        return outlet(pressure(example.input("pressure")).pascals(), Square.ofOutlet(k));
    }

    private static double outlet(double before_Pa, Law law) {
        Network laid = new Network().fixed("before", before_Pa).fixed("air", 0);
        laid.link("outlet", "before", "air", new OneWay(law));
        return new Flow(NetworkSolver.solve(laid).flow_m3s("outlet")).gpm();
    }

    /** The pressure that is left at the printed distance is the one to keep, so that the distance is what it takes. */
    private static double relay(Example example) {
        double length_m = Length.ofFeet(Double.parseDouble(example.answer())).metres();
        double r = hoseLoss(example.input("loss")).value().r();
        Network laid =
                fromPump().link("hose", "pump", "end", new Square(r * length_m)).demand("end", m3s(example, "flow"));
        double taken = -psi(NetworkSolver.solve(laid).head_Pa("end"));
        double may = pressure(example.input("pump")).psi()
                - pressure(example.input("keep")).psi();
        return new Length(length_m * may / taken).feet();
    }

    private static double eductor(Example example) {
        return pressure(example.input("inlet")).psi() + hose(example);
    }

    /** Water that stands: the gauge at the foot shows the height of the column. */
    private static double column(Example example) {
        double lift_Pa =
                Constants.WATER_PA_PER_M * length(example.input("height")).metres();
        Network laid = new Network().fixed("top", lift_Pa).free("foot");
        laid.link("riser", "top", "foot", new Square(1));
        return psi(NetworkSolver.solve(laid).head_Pa("foot"));
    }
}
