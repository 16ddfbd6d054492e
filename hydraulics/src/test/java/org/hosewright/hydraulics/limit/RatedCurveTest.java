package org.hosewright.hydraulics.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RatedCurveTest {
    private static final RatedCurve PUMP = new RatedCurve(Flow.ofGpm(1500));

    /** Source: NFPA 1911 pump rating, 100 % at 150 psi net, 70 % at 200, 50 % at 250. */
    @ParameterizedTest
    @CsvSource({"100,1500", "150,1500", "200,1050", "250,750"})
    void capacityMatchesPublished(double pump_psi, double flow_gpm) {
        assertThat(PUMP.capacity(Pressure.ofPsi(pump_psi)).gpm()).isCloseTo(flow_gpm, within(1e-9));
    }

    @Test
    void pressureForAFlowAndTheCapacityThereAgree() {
        for (double flow_gpm = 20; flow_gpm <= 1500; flow_gpm += 7) {
            Pressure pump = PUMP.pressureFor(Flow.ofGpm(flow_gpm));
            assertThat(PUMP.capacity(pump).gpm()).isCloseTo(flow_gpm, within(1e-9));
        }
        assertThat(PUMP.pressureFor(Flow.ofGpm(1501)).psi()).isNegative();
    }

    @Test
    void capacityNeverGrowsWithPressureHolds() {
        double before = Double.POSITIVE_INFINITY;
        for (double pump_psi = 0; pump_psi < 500; pump_psi += 1) {
            double now = PUMP.capacity(Pressure.ofPsi(pump_psi)).gpm();
            assertThat(now).isPositive().isLessThanOrEqualTo(before);
            before = now;
        }
    }
}
