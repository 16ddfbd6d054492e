package org.hosewright.evidence.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.hosewright.evidence.calibration.Belief;
import org.hosewright.evidence.calibration.Calibration;
import org.hosewright.evidence.calibration.Course;
import org.hosewright.evidence.joint.Priors;
import org.hosewright.evidence.night.Night;
import org.hosewright.evidence.night.Reading;
import org.hosewright.evidence.night.Shown;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;
import org.junit.jupiter.api.Test;

/** A plan flown many times over with instruments and bore drawn from what is believed of them. */
class SimulatedNightsTest {
    private static final int NIGHTS = 60;

    /** The root mean square of 60 errors is good within 9 % (one standard deviation); three of them, and some for what the plan leaves
     * out: the scatter is estimated on the night, and the loss is not linear in the bore. */
    private static final double LEAST = 0.65;

    private static final double MOST = 1.35;

    private final Random random = new Random(20260512);

    @Test
    void plannedErrorsAndThoseOfSimulatedNightsAgree() {
        Plan plan = new ExamplePlan().plan(Question.HOSE, Question.PIPING, Question.METER);
        double plannedLoss = error(plan, "loss of attack-175");
        double plannedNeeded = error(plan, "pump pressure needed");
        double lossSquares = 0;
        double neededSquares = 0;
        Course longest = longest(plan);
        double tip_Pa = Pressure.ofPsi(50).pascals();
        double needed_Pa = value(plan, "pump pressure needed");
        for (int i = 0; i < NIGHTS; i++) {
            double bore = Math.exp(Priors.GAUGED_BORE * random.nextGaussian());
            Belief belief = Calibration.of(flown(plan, bore)).belief();
            double loss = belief.hose("attack-175").orElseThrow().value().r()
                    - HoseLoss.ofUs(ExamplePlan.BOOK_C).r();
            double needed = belief.neededPump(longest, Pressure.ofPsi(50))
                            .orElseThrow()
                            .value()
                            .pascals()
                    - tip_Pa
                    - bore * bore * (needed_Pa - tip_Pa);
            lossSquares += loss * loss / NIGHTS;
            neededSquares += needed * needed / NIGHTS;
        }
        assertThat(Math.sqrt(lossSquares) / plannedLoss).as("hose loss").isBetween(LEAST, MOST);
        assertThat(Math.sqrt(neededSquares) / plannedNeeded)
                .as("needed pressure")
                .isBetween(LEAST, MOST);
    }

    private static Known<?> known(Plan plan, String what) {
        return plan.foreseen().stream()
                .filter(seen -> seen.what().startsWith(what))
                .findFirst()
                .flatMap(Foreseen::known)
                .orElseThrow();
    }

    private static double error(Plan plan, String what) {
        return known(plan, what).standardErrorSi();
    }

    /** Of the truth that the nights are made with: the book's loss, and the piping that the plan foretells with. */
    private static double value(Plan plan, String what) {
        TestPoint longest = plan.points().stream()
                .filter(point -> !point.shut())
                .reduce((one, other) -> one.lay() >= other.lay() ? one : other)
                .orElseThrow();
        double length_m = longest(plan).length().metres();
        double flown_m = longest.line().length().metres();
        double q2 = Math.pow(longest.state().flow().cubicMetresPerSecond(), 2);
        double wanted2 =
                Math.pow(longest.line().tip().flow_m3s(Pressure.ofPsi(50).pascals()), 2);
        double piping = longest.state().pipingLoss().pascals() / q2;
        double hose = longest.state().hoseLoss().pascals() / q2 / flown_m;
        assertThat(known(plan, what).value().si()).isPositive();
        return Pressure.ofPsi(50).pascals() + (piping + hose * length_m) * wanted2;
    }

    private static Course longest(Plan plan) {
        Seeking seeking = new Seeking(plan.means(), seekingPoint(plan));
        return seeking.course();
    }

    /** The lay that the plan's headline is about: 450 ft, the longest that 250 psi and the book's loss allow at 50 psi. */
    private static TestPoint seekingPoint(Plan plan) {
        Points points = Points.of(plan.means());
        return points.all().stream()
                .filter(point -> !point.shut() && Math.abs(point.state().tip().psi() - 50) < 1)
                .reduce((one, other) -> one.lay() >= other.lay() ? one : other)
                .orElseThrow();
    }

    private Night flown(Plan plan, double bore) {
        double meter = Math.exp(0.05 * random.nextGaussian());
        double pumpOff = 2 * random.nextGaussian();
        double tipOff = random.nextGaussian();
        List<Reading> readings = new ArrayList<>();
        for (TestPoint point : plan.points()) {
            Reading foretold = point.foretold(String.valueOf(readings.size() + 1), plan.means());
            readings.add(read(foretold, point, bore, meter, pumpOff, tipOff));
        }
        return new Night(readings, plan.means().gear(), Map.of(), plan.means().units());
    }

    private Reading read(Reading foretold, TestPoint point, double bore, double meter, double pumpOff, double tipOff) {
        double loss_psi =
                (point.state().hoseLoss().psi() + point.state().pipingLoss().psi()) * bore * bore;
        double pump_psi =
                point.state().tip().psi() + loss_psi + point.state().rise().psi();
        double flow_gpm = point.state().flow().gpm() * bore * meter * Math.exp(0.0125 * random.nextGaussian());
        Shown shown = new Shown(
                Pressure.ofPsi(pump_psi + pumpOff + random.nextGaussian()),
                Optional.of(Pressure.ofPsi(point.state().tip().psi() + tipOff + 0.5 * random.nextGaussian())),
                foretold.shown().flow().map(any -> Flow.ofGpm(flow_gpm)),
                Optional.empty(),
                Optional.empty());
        return new Reading(foretold.id(), foretold.laid(), shown, foretold.with(), false);
    }
}
