package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.LimitKind;
import org.hosewright.hydraulics.quantity.Pressure;

/** What each piece of a lay is held to, with every outlet shut, and what its eductors and its supply are held to. */
final class PieceLimits {
    private static final String SHUT = ", nozzle shut";
    private static final String TESTED = "90 % of its service test";
    private static final String RATED = "its maker's rating";

    private PieceLimits() {}

    /** What stands under the air's pressure, suction hose, is held to nothing here. */
    static List<Limit> of(LayState lay) {
        List<Limit> limits = new ArrayList<>();
        lay.parts().pieces().forEach(piece -> add(limits, piece, ""));
        for (FoamState foam : lay.parts().foam()) {
            if (foam.inlet().pascals() > 0) {
                limits.add(new Limit(
                        "the back pressure on " + foam.id(),
                        LimitKind.BACK_PRESSURE,
                        foam.back(),
                        foam.mostBack(),
                        "the share of its inlet pressure above which it draws nothing"));
            }
        }
        for (LayState.Posted one : lay.parts().posted()) {
            String what = "the posted pressure of the standpipe on " + one.place() + ", outlets shut";
            limits.add(new Limit(what, LimitKind.APPLIANCE, one.still(), one.most(), "posted at its connection"));
        }
        lay.intake().ifPresent(intake -> addSupply(limits, intake));
        return limits;
    }

    private static void add(List<Limit> limits, Piece piece, String beside) {
        if (piece.still().pascals() < 0) {
            return;
        }
        Optional<Pressure> tested = piece.run().flatMap(run -> run.hose().limit());
        tested.ifPresent(most -> {
            Hose hose = piece.run().orElseThrow().hose();
            limits.add(new Limit(hose.id() + beside + SHUT, LimitKind.HOSE, piece.still(), most, TESTED));
        });
        Optional<Pressure> rated = piece.appliance().flatMap(Appliance::rated);
        rated.ifPresent(most -> {
            String id = piece.appliance().orElseThrow().id();
            limits.add(new Limit(id + SHUT, LimitKind.APPLIANCE, piece.still(), most, RATED));
        });
    }

    private static void addSupply(List<Limit> limits, Intake intake) {
        intake.hoses().forEach(piece -> add(limits, piece, " of the supply"));
        findIntake("the intake", intake.pressure(), intake.least()).ifPresent(limits::add);
        for (Intake.PumpState pump : intake.pumps()) {
            findIntake("the intake of " + pump.engine(), pump.intake(), pump.least())
                    .ifPresent(limits::add);
            pump.findCeiling().ifPresent(limits::add);
            pump.findCapacity().ifPresent(limits::add);
        }
    }

    /** An intake may not fall below its least: said as what it may still lack, of what it may lack. */
    private static Optional<Limit> findIntake(String what, Pressure at, Pressure least) {
        if (least.pascals() < 0) {
            Pressure lifts = new Pressure(-at.pascals());
            return Optional.of(new Limit(
                    "the lift at " + what,
                    LimitKind.INTAKE,
                    lifts,
                    new Pressure(-least.pascals()),
                    "two thirds of what the air lifts, less the vapour's pressure"));
        }
        return Optional.empty();
    }
}
