package org.hosewright.hydraulics.lay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.hydraulics.supply.HydrantCurve;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Slopes by adjoints, against differences of the whole solve on lays drawn at random. */
class LaySlopesTest {
    private static final long SEED = 20261126;
    private static final Ask.AtPump AT_140 = new Ask.AtPump(Pressure.ofPsi(140));
    private static final int COUNT = 5;
    private static final int LONG_COUNT = 60;

    /** As a share of the answer: a step of a thousandth squared, and the last digits of two solves over it [1]. */
    private static final double DIFFERENCED = 2e-5;

    /** One-sided slopes that differ by more stand on a kink: a threshold, an end of a band, a tip about to run dry [1]. */
    private static final double KINKED = 1e-2;

    /** Each number is this uncertain [1]: its twentieth, a thousandth, is a step in which little curves. */
    private static final double ERROR = 0.02;

    @Test
    void adjointsAndDifferencesAgree() {
        agree(COUNT);
    }

    @Test
    @Tag("long")
    void adjointsAndDifferencesOfManyAgree() {
        agree(LONG_COUNT);
    }

    private static void agree(int count) {
        Random random = new Random(SEED);
        int compared = 0;
        int kinked = 0;
        for (int i = 0; i < count; i++) {
            Lay lay = uncertain(Lays.random(random));
            if (lay.outlets().stream().allMatch(End.Outlet::shut)) {
                continue;
            }
            for (Ask ask : List.of(AT_140, new Ask.AtFlow(Flow.ofGpm(110)))) {
                boolean smooth = compare(lay, ask, "seed " + SEED + ", lay " + i + ", " + ask);
                compared += smooth ? 1 : 0;
                kinked += smooth ? 0 : 1;
            }
            boolean smooth =
                    compare(slid(lay, new Random(SEED + i)), AT_140, "seed " + SEED + ", lay " + i + " at fixed speed");
            compared += smooth ? 1 : 0;
            kinked += smooth ? 0 : 1;
        }
        System.out.println(compared + " lays compared, " + kinked + " stand on a kink");
        assertThat(compared).isGreaterThan(4 * kinked);
        assertThat(compared).isGreaterThan(count);
    }

    /** The lay at a fixed speed that was read at 140 psi and some flow, half of them from a hydrant. */
    private static Lay slid(Lay lay, Random random) {
        Flow read = Flow.ofGpm(200 + random.nextInt(800));
        Lay fixed = lay.withPump(new PumpMode.FixedSpeed(AT_140.pressure(), read, Flow.ofGpm(1500)));
        HydrantCurve hydrant = new HydrantCurve(Pressure.ofPsi(80), Pressure.ofPsi(60), Flow.ofGpm(1000));
        Supply.SupplyHose hose = new Supply.SupplyHose(List.of(Lays.run("supply-5", 5, 0.08, 300, 4)));
        Supply.Feed feed = new Supply.Feed(new Source.Hydrant(hydrant), List.of(hose));
        return random.nextBoolean()
                ? fixed.withSupply(Optional.of(new Supply(List.of(feed), Pressure.ofPsi(20))))
                : fixed;
    }

    private static boolean compare(Lay lay, Ask ask, String where) {
        List<LayTerm> terms = LayTerm.listOf(lay);
        List<String> ids = terms.stream().map(LayTerm::id).toList();
        LayState best = LaySolver.solve(lay, ask);
        var adjoints = LaySpread.Parts.of(LaySlopes.find(lay, ask, best, ids).orElseThrow(), terms);
        var differences = LaySpread.Differences.of(lay, ask, terms);
        List<String> answers = new ArrayList<>(
                best.open().stream().map(tip -> tip.outlet().id()).toList());
        answers.add(LaySpread.PUMP);
        for (String answer : answers) {
            double scale = scale(best, answer);
            for (int t = 0; t < terms.size(); t++) {
                double bend = LaySpread.Differences.figure(differences.up().get(t), answer)
                        + LaySpread.Differences.figure(differences.down().get(t), answer)
                        - 2 * LaySpread.Differences.figure(best, answer);
                if (Math.abs(bend) > KINKED * LayTerm.SHARE * ERROR * scale) {
                    return false;
                }
            }
            List<Double> ours = adjoints.of(answer);
            List<Double> theirs = differences.of(answer);
            for (int t = 0; t < terms.size(); t++) {
                assertThat(Math.abs(ours.get(t) - theirs.get(t)) / (ERROR * scale))
                        .as(where + ": " + answer + " by " + ids.get(t) + ", " + ours + " " + theirs)
                        .isLessThan(DIFFERENCED);
            }
        }
        return true;
    }

    private static double scale(LayState best, String answer) {
        return Math.abs(
                answer.equals(LaySpread.PUMP)
                        ? best.pump().pascals()
                        : best.flow().cubicMetresPerSecond());
    }

    /** The lay with every number of its kit uncertain. */
    private static Lay uncertain(Lay lay) {
        List<Lay.FromDischarge> lines = new ArrayList<>();
        for (Lay.FromDischarge line : lay.lines()) {
            double k = line.discharge().lossOrNone().k();
            Known<PointLoss> loss = Known.of(new PointLoss(k), new PointLoss(ERROR * k));
            lines.add(new Lay.FromDischarge(
                    new Discharge(line.discharge().id(), Optional.empty(), Optional.of(loss)), line.leg()));
        }
        return new Lay(lines).mapped(LaySlopesTest::uncertain).changed(outlet -> {
            Known<Ratio> factor = Known.of(new Ratio(0.97), new Ratio(ERROR));
            Nozzle plain = outlet.nozzle();
            return outlet.with(
                    new Nozzle(plain.id(), plain.settings(), plain.most(), Optional.of(factor)), outlet.setting());
        });
    }

    private static Leg uncertain(Leg leg) {
        List<Run> runs = leg.runs().stream().map(LaySlopesTest::uncertain).toList();
        List<Leg> behind =
                leg.end().legs().stream().map(LaySlopesTest::uncertain).toList();
        return new Leg(runs, behind.isEmpty() ? leg.end() : leg.end().withLegs(behind));
    }

    private static Run uncertain(Run run) {
        if (run.hose().law().isPresent()) {
            return run;
        }
        Hose plain = run.hose();
        double r = plain.loss().value().r();
        Hose own = new Hose(
                "hose " + Numbers.plain(r),
                plain.diameter(),
                plain.section(),
                Known.of(new HoseLoss(r), new HoseLoss(ERROR * r)),
                plain.serviceTest());
        return new Run(own, run.length(), run.rise());
    }
}
