package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.LayState.Lost;
import org.hosewright.hydraulics.lay.LayState.Reduced;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.hydraulics.supply.TankTime;

/** What people should know about the pieces of a lay, as sentences.
 *
 * @param lay the lay while it flows
 * @param shown how quantities are written
 */
record PieceCautions(LayState lay, QuantityShown shown) {
    /** How much less than asked counts as less [1]. */
    private static final double LESS = 1e-6;

    /** An inlet pressure that is off by more makes the mix wrong [1]. @source common practice */
    private static final double INLET_OFF = 0.05;

    /** A burst: the word to the crew comes first, then what to do. */
    List<String> ofBursts() {
        List<String> says = new ArrayList<>();
        for (Lost lost : lay.parts().bursts()) {
            String crews = lost.feeds().isEmpty() ? "the crews" : "the crew at " + String.join(", ", lost.feeds());
            says.add("By radio first, to " + crews + ": there is a " + lost.id() + ", and " + shown.text(lost.flow())
                    + " run out there. Then, at their word, gate that line down slowly; hold the pump as it is"
                    + " until they have answered.");
        }
        return says;
    }

    /** A tip that gets less than asked, because something before it lets no more through. */
    Optional<String> findLess(AtTip tip, Ask ask) {
        if (ask instanceof Ask.AtPump || !(tip.state().flow().cubicMetresPerSecond() < short_m3s(tip, ask))) {
            return Optional.empty();
        }
        return Optional.of(tip.outlet().id() + " gets less than asked, "
                + shown.text(tip.state().flow()) + " at "
                + shown.text(tip.state().tip()) + ": a reducer before it lets no more through, and pumping harder"
                + " changes nothing here.");
    }

    private static double short_m3s(AtTip tip, Ask ask) {
        return Asked.flow_m3s(tip.outlet(), ask) * (1 - LESS);
    }

    /** Intakes that would fall below what they must keep: this flow is not there. */
    List<String> ofIntakes() {
        List<String> says = new ArrayList<>();
        lay.intake().ifPresent(intake -> addIntake(says, intake));
        return says;
    }

    List<String> list() {
        List<String> says = new ArrayList<>();
        lay.parts().reducers().forEach(reduced -> addReducer(says, reduced));
        lay.parts().foam().forEach(foam -> addFoam(says, foam));
        lay.intake().flatMap(Intake::tank).ifPresent(time -> addTank(says, time));
        addSurge(says);
        says.replaceAll(PieceCautions::capital);
        return says;
    }

    private static String capital(String sentence) {
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    private void addReducer(List<String> says, Reduced reduced) {
        String feeds = reduced.feeds().isEmpty() ? "" : " (" + String.join(", ", reduced.feeds()) + ")";
        says.add(
                reduced.active()
                        ? reduced.name() + " holds " + shown.text(reduced.holds())
                                + ": pumping harder changes nothing here" + feeds
                                + ". If it fails open, what follows sees " + shown.text(reduced.before()) + "."
                        : reduced.name() + " stands wide open at " + shown.text(reduced.before()) + ": it will hold at "
                                + shown.text(reduced.holds()) + feeds + ".");
    }

    private void addFoam(List<String> says, FoamState foam) {
        if (!foam.draws() && foam.flow().cubicMetresPerSecond() > 0) {
            says.add(foam.id() + " draws no concentrate: " + shown.text(foam.back()) + " stand behind it, the most is "
                    + shown.text(foam.mostBack()) + ".");
        }
        if (!foam.matches()) {
            says.add(
                    foam.id() + " is made for " + shown.text(foam.made().rated().flow())
                            + ", the nozzles behind it flow " + shown.text(foam.nozzles()) + ": they must match.");
        }
        double share = foam.inlet().pascals() / foam.made().rated().inlet().pascals() - 1;
        if (foam.draws() && Math.abs(share) > INLET_OFF) {
            says.add("The inlet of " + foam.id() + " stands at " + shown.text(foam.inlet()) + ", made for "
                    + shown.text(foam.made().rated().inlet()) + ": the mix runs " + (share < 0 ? "rich" : "lean")
                    + ".");
        }
        foam.lasts()
                .ifPresent(time -> says.add("The concentrate at " + foam.id() + " lasts " + shown.text(time) + " at "
                        + shown.text(new Ratio(foam.made().draws().share().value())) + "."));
    }

    private void addIntake(List<String> says, Intake intake) {
        boolean under = intake.pressure().pascals() < intake.least().pascals() - Feeding.SAME_PA;
        if (under && intake.least().pascals() >= 0) {
            says.add("The intake would stand at " + shown.text(intake.pressure()) + ", below the "
                    + shown.text(intake.least()) + " to keep: this flow is not there. What sets it: "
                    + intake.shortest() + ".");
        }
        if (under && intake.least().pascals() < 0) {
            says.add("The pump would have to lift by "
                    + shown.text(new Pressure(-intake.pressure().pascals()))
                    + ", more than the air gives to count on, "
                    + shown.text(new Pressure(-intake.least().pascals()))
                    + ".");
        }
        addIdle(says, "The pump", lay.pump(), intake.pressure());
        for (Intake.PumpState pump : intake.pumps()) {
            addPump(says, pump);
        }
        addIdleLines(says, intake);
    }

    private void addPump(List<String> says, Intake.PumpState pump) {
        boolean lifts = pump.least().pascals() < 0;
        if (pump.intake().pascals() < pump.least().pascals() - Feeding.SAME_PA) {
            says.add(
                    lifts
                            ? pump.engine() + " would have to lift by "
                                    + shown.text(new Pressure(-pump.intake().pascals()))
                                    + ", more than the air gives to count on, "
                                    + shown.text(new Pressure(-pump.least().pascals())) + "."
                            : "The intake of " + pump.engine() + " would stand at " + shown.text(pump.intake())
                                    + ", below the " + shown.text(pump.least()) + " to keep.");
        }
        addIdle(says, pump.engine(), pump.pump(), pump.intake());
    }

    /** Lines beside stronger ones, whose clappers stay shut. */
    private void addIdleLines(List<String> says, Intake intake) {
        for (Piece piece : intake.hoses()) {
            if (piece.flow().cubicMetresPerSecond() == 0 && lay.flow().cubicMetresPerSecond() > 0) {
                says.add("Nothing comes through " + piece.what() + " from " + piece.place()
                        + ": it brings less pressure than stands at the intake that it leads to.");
            }
        }
    }

    /** A pump cannot hold less than what stands at its intake. */
    private void addIdle(List<String> says, String pump, Pressure at, Pressure intake) {
        if (at.pascals() < intake.pascals() - Feeding.SAME_PA) {
            says.add(pump + " is to hold " + shown.text(at) + ", less than the " + shown.text(intake)
                    + " at its intake: no pump holds less than it is fed. Idling it gives at least "
                    + shown.text(intake) + "; gate its discharge down.");
        }
    }

    private void addTank(List<String> says, TankTime time) {
        says.add("The tank lasts " + shown.text(time.lasts()) + " at " + shown.text(time.drawn())
                + ", a tenth of its level not counted"
                + (time.isShort() ? "; its piping lets no more through than that." : "."));
    }

    /** A sudden stop only warns: it passes no limit and breaks none. */
    private void addSurge(List<String> says) {
        Optional<Piece> worst = Optional.empty();
        for (Piece piece : lay.parts().pieces()) {
            if (piece.surge().isPresent() && (worst.isEmpty() || surge_Pa(piece) > surge_Pa(worst.get()))) {
                worst = Optional.of(piece);
            }
        }
        worst.filter(this::isBeyond)
                .ifPresent(piece -> says.add("Shut slowly: stopping the water in " + piece.what()
                        + " at once could add about " + shown.text(new Pressure(surge_Pa(piece)))
                        + " (an estimate, with a wave speed of "
                        + shown.velocity(Surge.WAVE_MS) + "; none for fire hose is published)."));
    }

    private boolean isBeyond(Piece piece) {
        Optional<Pressure> most = piece.run().flatMap(run -> run.hose().limit());
        return most.isPresent()
                && piece.still().pascals() + surge_Pa(piece) > most.get().pascals();
    }

    private static double surge_Pa(Piece piece) {
        return piece.surge().map(surge -> surge.rise().pascals()).orElse(0.0);
    }
}
