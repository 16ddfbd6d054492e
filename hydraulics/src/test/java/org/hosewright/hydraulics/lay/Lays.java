package org.hosewright.hydraulics.lay;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.HoseLaw;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;

/** Lays that the tests solve. */
final class Lays {
    static final Tip SEVEN_EIGHTHS = new SmoothBore(Length.ofInches(0.875), Pressure.ofPsi(50));

    private Lays() {}

    static Run run(String id, double inches, double loss, double feet, double rise) {
        Hose hose = new Hose(
                id,
                Length.ofInches(inches),
                Length.ofFeet(50),
                Known.of(HoseLoss.ofUs(loss)),
                Optional.of(Pressure.ofPsi(300)));
        return new Run(hose, Length.ofFeet(feet), Length.ofFeet(rise));
    }

    static End.Outlet outlet(String id, Tip tip, boolean shut) {
        return new End.Outlet(id, Nozzle.of(id + "-nozzle", tip), "", shut, Optional.empty());
    }

    static Appliance wye(Appliance.Per per, ApplianceLoss loss) {
        return new Appliance("gated-wye", loss, per, Optional.empty());
    }

    static ApplianceLoss quadratic(double psi) {
        return new ApplianceLoss.Quadratic(Known.of(PointLoss.ofUs(psi)));
    }

    static Discharge discharge(String id, double psi) {
        return new Discharge(id, Optional.empty(), Optional.of(Known.of(PointLoss.ofUs(psi))));
    }

    static Lay one(double piping, Leg leg) {
        return new Lay(List.of(new Lay.FromDischarge(discharge("rear-3", piping), leg)));
    }

    /** The examples' two lines on a wye: 400 ft of 3 in, then twice 200 ft of 1 3/4 in, 20 ft up. */
    static Lay gardenCourt(boolean shut) {
        Leg a = new Leg(List.of(run("attack-175", 1.75, 9.19, 200, 20)), outlet("a", SEVEN_EIGHTHS, false));
        Leg b = new Leg(List.of(run("attack-175", 1.75, 9.19, 200, 20)), outlet("b", SEVEN_EIGHTHS, shut));
        Appliance wye = wye(Appliance.Per.LEG, quadratic(0.55));
        return one(
                0.60, new Leg(List.of(run("leader-3", 3, 0.75, 400, 0)), new End.Wye(Optional.of(wye), List.of(a, b))));
    }

    /** A lay with up to three levels of wyes, tips of every kind and rules of every kind. */
    static Lay random(Random random) {
        int lines = 1 + random.nextInt(3);
        Lay.FromDischarge[] all = new Lay.FromDischarge[lines];
        for (int i = 0; i < lines; i++) {
            all[i] = new Lay.FromDischarge(
                    discharge("d" + i, 3 * random.nextDouble()),
                    leg(random, random.nextInt(40) == 0 ? 3 : random.nextInt(3), "d" + i));
        }
        return new Lay(List.of(all));
    }

    private static Leg leg(Random random, int levels, String id) {
        Run run = hose(
                random,
                run("hose", 1.75, 0.5 + 15 * random.nextDouble(), 50 + random.nextInt(400), random.nextInt(80) - 40));
        if (levels == 0) {
            return new Leg(List.of(run), outlet(id, tip(random), random.nextInt(6) == 0));
        }
        ApplianceLoss loss = random.nextBoolean()
                ? quadratic(2 * random.nextDouble())
                : new ApplianceLoss.Rule(Pressure.ofPsi(10), Flow.ofGpm(350));
        Appliance wye = wye(random.nextBoolean() ? Appliance.Per.LEG : Appliance.Per.TOTAL, loss);
        List<Leg> legs = List.of(leg(random, levels - 1, id + "-a"), leg(random, levels - 1, id + "-b"));
        return new Leg(List.of(run), new End.Wye(random.nextInt(5) == 0 ? Optional.empty() : Optional.of(wye), legs));
    }

    /** Of six hoses one goes by Hazen-Williams and one by its roughness. */
    private static Run hose(Random random, Run run) {
        HoseLaw law = random.nextBoolean()
                ? new HoseLaw.HazenWilliams(100 + random.nextInt(50))
                : new HoseLaw.Roughness(new Length(2e-4 * random.nextDouble()));
        Hose plain = run.hose();
        Hose other = Hose.by(law, plain.id(), plain.diameter(), plain.section(), plain.serviceTest());
        return random.nextInt(3) == 0 ? new Run(other, run.length(), run.rise()) : run;
    }

    private static Tip tip(Random random) {
        return switch (random.nextInt(3)) {
            case 0 -> SEVEN_EIGHTHS;
            case 1 -> new Fog(Flow.ofGpm(95 + random.nextInt(100)), Pressure.ofPsi(75));
            default -> new Automatic(Pressure.ofPsi(100), Flow.ofGpm(60), Flow.ofGpm(200));
        };
    }
}
