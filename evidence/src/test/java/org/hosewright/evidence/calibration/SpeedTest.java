package org.hosewright.evidence.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hosewright.evidence.calibration.NightWriter.Row;
import org.hosewright.evidence.fault.Hearing;
import org.hosewright.evidence.fit.DenseLibrary;
import org.hosewright.evidence.fit.LevenbergMarquardt;
import org.hosewright.evidence.fit.Minimum;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.joint.Fit;
import org.hosewright.evidence.joint.Joint;
import org.hosewright.evidence.joint.Posterior;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.night.Night;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.Length;
import org.junit.jupiter.api.Test;

/** How fast a night is weighed, beside a general library on the same problem in the same run. */
class SpeedTest {
    private static final long SEED = 7;
    private static final int HOSES = 7;
    private static final int READINGS = 60;
    private static final int ROUNDS = 60;

    /** What the fit must be faster by; measured far more. */
    private static final double LEAST_RATIO = 3;

    /** What the advice may take [ms]. */
    private static final double MOST_ADVICE_MS = 50;

    /** In prior standard deviations. */
    private static final double NEAR = 1e-5;

    private static final double TOLERANCE = 1e-10;

    /** Readings on seven hoses: 12 unknowns with piping, nozzle, meter and two gauges. */
    static Night night() {
        Random random = new Random(SEED);
        NightWriter gear = ExampleNight.gear(new Tap.Pitot());
        List<Row> rows = new ArrayList<>();
        for (int h = 0; h < HOSES; h++) {
            gear.hose("hose-" + h, 15.5);
        }
        for (int i = 0; i < READINGS; i++) {
            double feet = 150 + 50 * random.nextInt(10);
            double tip = 35 + 5 * random.nextInt(6);
            Row row = Ideal.attack(String.valueOf(i + 1), feet, tip);
            double off = 1 + 0.01 * random.nextGaussian();
            rows.add(row.hose(List.of(new Stretch("hose-" + i % HOSES, Length.ofFeet(feet))))
                    .pump(row.pump() * off));
        }
        return gear.rows(rows.toArray(new Row[0])).night();
    }

    private static Joint joint() {
        return Survey.of(night()).joint();
    }

    @Test
    void sixtyReadingsAreWeighedFasterThanByALibraryHolds() {
        Joint joint = joint();
        assertThat(joint.unknowns().size()).isEqualTo(12);
        long ours = Long.MAX_VALUE;
        long theirs = Long.MAX_VALUE;
        Minimum minimum = Fit.minimise(joint, joint.start());
        double[] point = new double[0];
        for (int round = 0; round < ROUNDS; round++) {
            long begun = System.nanoTime();
            minimum = new LevenbergMarquardt(joint.blocks(), 0, TOLERANCE).solve(joint.start());
            long between = System.nanoTime();
            point = new DenseLibrary(joint.blocks(), joint.start())
                    .solve(TOLERANCE)
                    .getPoint()
                    .toArray();
            ours = Math.min(ours, between - begun);
            theirs = Math.min(theirs, System.nanoTime() - between);
        }
        System.out.println("60 readings, 12 unknowns: ours " + ours / 1000 + " us, library " + theirs / 1000
                + " us, ratio " + (double) theirs / ours);
        for (int i = 0; i < joint.unknowns().size(); i++) {
            assertThat(minimum.point().unknown(i)).isCloseTo(point[i], within(NEAR));
        }
        assertThat((double) theirs / ours).isGreaterThan(LEAST_RATIO);
    }

    /** Which reading to take next, and whether to stop, once a night is weighed: of 9 readings and of 60. */
    @Test
    void theAdviceIsThereAtOnceHolds() {
        for (Night night : List.of(ExampleNight.tapped(new Tap.Pitot()).night(), night())) {
            Survey survey = Survey.of(night);
            Hearing hearing = Hearing.of(survey);
            Posterior posterior = Posterior.of(hearing.fit());
            long least = Long.MAX_VALUE;
            for (int round = 0; round < ROUNDS; round++) {
                long begun = System.nanoTime();
                Optional<NextReading> next = Advice.find(survey, posterior, hearing.active());
                Optional<String> stop = Advice.findStop(survey, posterior, hearing.active());
                least = Math.min(least, System.nanoTime() - begun);
                assertThat(next.isPresent() || stop.isPresent()).isTrue();
            }
            System.out.println("advice after " + night.readings().size() + " readings: " + least / 1000 + " us");
            assertThat(least / 1e6).isLessThan(MOST_ADVICE_MS);
        }
    }
}
