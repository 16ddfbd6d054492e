package org.hosewright.ledger.picture;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.LayState.Station;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.profile.Answer;
import org.hosewright.hydraulics.profile.GroundAt;
import org.hosewright.hydraulics.profile.HoseRun;
import org.hosewright.hydraulics.profile.LineProfile;
import org.hosewright.hydraulics.profile.PressureAt;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.LayReport;

/** The way from the pump to one tip of a lay, drawn as a line profile. */
public final class LayPicture {
    private final Kit kit;
    private final LayReport report;
    private final AtTip tip;
    private final QuantityShown shown;
    private final List<PressureAt> points = new ArrayList<>();
    private final List<GroundAt> ground = new ArrayList<>();

    private LayPicture(LayReport report, AtTip tip) {
        this.kit = report.kit();
        this.report = report;
        this.tip = tip;
        this.shown = QuantityShown.of(kit.units());
    }

    public static LineProfile of(LayReport report, AtTip tip) {
        return new LayPicture(report, tip).profile();
    }

    private LineProfile profile() {
        List<HoseRun> hose = new ArrayList<>();
        List<Stretch> chain = new ArrayList<>();
        for (Run run : tip.path().runs()) {
            String label = shown.text(run.length()) + " " + run.hose().id();
            hose.add(new HoseRun(run.length(), run.hose().section(), label));
            chain.add(new Stretch(run.hose().id(), run.length()));
        }
        walk();
        List<String> beside = new ArrayList<>(
                List.of(shown.text(tip.state().tip()), shown.text(tip.state().reaction())));
        Length height = ground.get(ground.size() - 1).height();
        if (!shown.rise(height).equals(shown.rise(new Length(0)))) {
            beside.add(shown.rise(height));
        }
        Answer pump = Answer.of(shown.text(tip.state().pump()), List.of("at the pump"));
        Answer end = Answer.of(shown.text(tip.state().flow()), beside);
        return new LineProfile(kit.units(), hose, points, ground, List.of(), List.of(), pump, end)
                .withLimits(PictureLimits.of(kit, ceiling(), chain));
    }

    private Optional<Pressure> ceiling() {
        return Optional.ofNullable(kit.engines().get(report.laid().engine()))
                .map(EngineRecord::engine)
                .flatMap(engine -> engine.ceiling());
    }

    /** The pressures behind each piece and the ground under it: a hose's loss and its rise fall along it, a height
     * without hose is a wall, every other piece a step.
     */
    private void walk() {
        double at_m = 0;
        double height_m = 0;
        double before_Pa = 0;
        Iterator<Run> runs = tip.path().runs().iterator();
        double ofHose_m = 0;
        ground(at_m, height_m);
        for (Station station : tip.stations()) {
            double now_Pa = station.pressure().pascals();
            if (station.length().metres() > 0) {
                at_m += station.length().metres();
                ofHose_m = runs.next().rise().metres();
                height_m += ofHose_m;
                ground(at_m, height_m);
            } else if (ofHose_m != 0) {
                points.remove(points.size() - 1);
                ofHose_m = 0;
            } else if (isRise(station)) {
                height_m += (before_Pa - now_Pa) / Constants.WATER_PA_PER_M;
                ground(at_m, height_m);
            }
            points.add(new PressureAt(new Length(at_m), station.pressure(), new Pressure(0)));
            before_Pa = now_Pa;
        }
    }

    private void ground(double at_m, double height_m) {
        ground.add(new GroundAt(new Length(at_m), new Length(height_m)));
    }

    private static boolean isRise(Station station) {
        return station.what().equals("rise") || station.what().equals("fall");
    }
}
