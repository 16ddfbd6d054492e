package org.hosewright.evidence.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hosewright.evidence.fault.Hearing;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.joint.Posterior;
import org.hosewright.evidence.joint.Survey;
import org.junit.jupiter.api.Test;

class StopTest {
    /** What the advice may take on the machine that serves it [ms]. */
    private static final double MOST_ms = 50;

    private static final int WARM = 30;

    @Test
    void fewReadingsWantMoreAndManyDoNotHold() {
        NightWriter few = Ideal.gear().rows(Ideal.attack("1", 150, 50), Ideal.attack("2", 350, 50));
        assertThat(Calibration.of(few.night()).belief().stop()).isEmpty();
        double[] lengths = {150, 350, 550, 750};
        NightWriter many = Ideal.gear().rows(Ideal.attacks(lengths, 35, 45, 50, 55, 65));
        assertThat(Calibration.of(many.night()).belief().stop())
                .hasValueSatisfying(says -> assertThat(says).startsWith("two more readings change nothing you decide"));
    }

    @Test
    void theAdviceIsQuickHolds() {
        Survey survey = Survey.of(ExampleNight.tapped(new Tap.Pitot()).night());
        Hearing hearing = Hearing.of(survey);
        Posterior posterior = Posterior.of(hearing.fit());
        List<Integer> active = hearing.active();
        double least_ms = Double.POSITIVE_INFINITY;
        for (int i = 0; i < WARM; i++) {
            long begun = System.nanoTime();
            Advice.find(survey, posterior, active);
            Advice.findStop(survey, posterior, active);
            least_ms = Math.min(least_ms, (System.nanoTime() - begun) / 1e6);
        }
        assertThat(least_ms).isLessThan(MOST_ms);
    }
}
