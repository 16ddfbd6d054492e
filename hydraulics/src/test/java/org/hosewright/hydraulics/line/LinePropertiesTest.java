package org.hosewright.hydraulics.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.junit.jupiter.api.Test;

class LinePropertiesTest {
    private static final long SEED = 20260512;
    private static final int CASES = 2000;

    /** Share by which two ways round may differ [1]: rounding of doubles in a few operations. */
    private static final double SAME = 1e-9;

    private final RandomLines random = new RandomLines(SEED);

    @Test
    void inverseOfForwardHolds() {
        for (int i = 0; i < CASES; i++) {
            Line line = random.any();
            Flow flow = Flow.ofGpm(random.between(5, 500));
            LineState forward = LineSolver.atFlow(line, flow);
            if (forward.pump().pascals() > 0) {
                LineState back = LineSolver.atPump(line, forward.pump());
                assertThat(back.flow().gpm())
                        .as("seed %d case %d", SEED, i)
                        .isCloseTo(flow.gpm(), within(flow.gpm() * 1e-7));
            }
        }
    }

    @Test
    void partsAddUpToThePumpPressureHolds() {
        for (int i = 0; i < CASES; i++) {
            Line line = random.any();
            LineState state = LineSolver.atPump(line, Pressure.ofPsi(random.between(0, 400)));
            double sum = state.tip().pascals()
                    + state.hoseLoss().pascals()
                    + state.pipingLoss().pascals()
                    + state.applianceLoss().pascals()
                    + state.rise().pascals();
            assertThat(sum)
                    .as("seed %d case %d", SEED, i)
                    .isCloseTo(state.pump().pascals(), within(1e-6 + SAME * Math.abs(sum)));
        }
    }

    /** The slow reference: bisection on flow of the sum of every piece's own loss. */
    @Test
    void deliveredFlowAndBisectionAgree() {
        for (int i = 0; i < CASES; i++) {
            Line line = random.any();
            double pump_Pa = Pressure.ofPsi(random.between(0, 400)).pascals();
            double low = 0;
            double high = 1;
            for (int step = 0; step < 200; step++) {
                double middle = (low + high) / 2;
                if (sumOfPieces_Pa(line, middle) > pump_Pa) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            double flow_m3s =
                    LineSolver.atPump(line, new Pressure(pump_Pa)).flow().cubicMetresPerSecond();
            assertThat(flow_m3s).as("seed %d case %d", SEED, i).isCloseTo(low, within(1e-12 + SAME * low));
        }
    }

    @Test
    void moreHoseNeverLowersTheNeededPressureHolds() {
        for (int i = 0; i < CASES; i++) {
            Line line = random.any();
            Ask ask = Duty.of(line, java.util.Optional.empty()).ask();
            double shorter = LineSolver.solve(line, ask).pump().pascals();
            double last_m = line.last().length().metres();
            Line longer = line.withLastLength(new Length(last_m * random.between(1, 2)));
            assertThat(LineSolver.solve(longer, ask).pump().pascals())
                    .as("seed %d case %d", SEED, i)
                    .isGreaterThanOrEqualTo(shorter);
        }
    }

    @Test
    void morePumpPressureNeverLowersTheFlowHolds() {
        for (int i = 0; i < CASES; i++) {
            Line line = random.any();
            double pump_psi = random.between(0, 350);
            double more_psi = pump_psi + random.between(0, 50);
            assertThat(LineSolver.atPump(line, Pressure.ofPsi(more_psi)).flow().gpm())
                    .as("seed %d case %d", SEED, i)
                    .isGreaterThanOrEqualTo(LineSolver.atPump(line, Pressure.ofPsi(pump_psi))
                            .flow()
                            .gpm());
        }
    }

    @Test
    void orderOfHosesChangesNoFlowHolds() {
        for (int i = 0; i < CASES; i++) {
            Line line = random.any();
            List<Run> turned = new ArrayList<>(line.runs());
            java.util.Collections.reverse(turned);
            Line other = new Line(line.discharge(), turned, line.nozzle(), "");
            Pressure pump = Pressure.ofPsi(random.between(50, 300));
            double flow = LineSolver.atPump(line, pump).flow().gpm();
            assertThat(LineSolver.atPump(other, pump).flow().gpm())
                    .as("seed %d case %d", SEED, i)
                    .isCloseTo(flow, within(1e-9 + 1e-7 * flow));
            Pressure level = LineSolver.atFlow(line.withRise(line.rise()), Flow.ofGpm(150))
                    .pump();
            assertThat(level.psi())
                    .as("seed %d case %d", SEED, i)
                    .isCloseTo(LineSolver.atFlow(line, Flow.ofGpm(150)).pump().psi(), within(1e-9));
        }
    }

    private static double sumOfPieces_Pa(Line line, double flow_m3s) {
        Flow flow = new Flow(flow_m3s);
        Tip tip = line.tip();
        double sum_Pa = tip.pressure_Pa(flow_m3s)
                + line.discharge().lossOrNone().at(flow).pascals();
        for (Run run : line.runs()) {
            sum_Pa += run.hose().loss().value().over(run.length(), flow).pascals();
            // 0.434 psi/ft
            sum_Pa += Pressure.ofPsi(0.434 * run.rise().feet()).pascals();
            sum_Pa += run.end().map(end -> end.loss().loss_Pa(flow_m3s)).orElse(0.0);
        }
        return sum_Pa;
    }
}
