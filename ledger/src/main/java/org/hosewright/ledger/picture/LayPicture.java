package org.hosewright.ledger.picture;

import java.util.ArrayList;
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
        List<GroundAt> ground = new ArrayList<>(List.of(new GroundAt(new Length(0), new Length(0))));
        double at_m = 0;
        double height_m = 0;
        for (Run run : tip.path().runs()) {
            String label = shown.text(run.length()) + " " + run.hose().id();
            hose.add(new HoseRun(run.length(), run.hose().section(), label));
            chain.add(new Stretch(run.hose().id(), run.length()));
            at_m += run.length().metres();
            height_m += run.rise().metres();
            ground.add(new GroundAt(new Length(at_m), new Length(height_m)));
        }
        Answer pump = Answer.of(shown.text(tip.state().pump()), List.of("at the pump"));
        Answer end = Answer.of(
                shown.text(tip.state().flow()),
                List.of(shown.text(tip.state().tip()), shown.text(tip.state().reaction())));
        return new LineProfile(kit.units(), hose, pressures(), ground, List.of(), List.of(), pump, end)
                .withLimits(PictureLimits.of(kit, ceiling(), chain));
    }

    private Optional<Pressure> ceiling() {
        return Optional.ofNullable(kit.engines().get(report.laid().engine()))
                .map(EngineRecord::engine)
                .flatMap(engine -> engine.ceiling());
    }

    /** The pressures behind each piece; a hose's loss and its rise fall along it, every other piece is a step. */
    private List<PressureAt> pressures() {
        List<PressureAt> points = new ArrayList<>();
        double at_m = 0;
        for (Station station : tip.stations()) {
            at_m += station.length().metres();
            boolean rises = station.length().metres() == 0 && isRise(station);
            if (rises && !points.isEmpty()) {
                points.remove(points.size() - 1);
            }
            points.add(new PressureAt(new Length(at_m), station.pressure(), new Pressure(0)));
        }
        return points;
    }

    private static boolean isRise(Station station) {
        return station.what().equals("rise") || station.what().equals("fall");
    }
}
