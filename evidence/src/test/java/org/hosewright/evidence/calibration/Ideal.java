package org.hosewright.evidence.calibration;

import static org.hosewright.evidence.calibration.NightWriter.row;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.evidence.calibration.NightWriter.Row;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.Length;

/** Readings without scatter, to the whole psi: attack hose of 9.2, leader hose of 0.75, piping of 2, a meter reading 1.02. */
final class Ideal {
    static final double ATTACK_C = 9.2;
    static final double LEADER_C = 0.75;
    static final double PIPING_K = 2;
    static final double METER = 1.02;

    private Ideal() {}

    static NightWriter gear() {
        return ExampleNight.gear(new Tap.Pitot()).hose("leader-3", 0.8);
    }

    static double flow(double tip) {
        return 29.7 * 0.875 * 0.875 * Math.sqrt(tip);
    }

    static double pump(double attack, double leader, double piping, double tip) {
        double hundred = flow(tip) / 100;
        double resistance = piping + (ATTACK_C * attack + LEADER_C * leader) / 100;
        return Math.round(tip + resistance * hundred * hundred);
    }

    /** A reading on attack hose alone. */
    static Row attack(String id, double length, double tip) {
        double pump = pump(length, 0, PIPING_K, tip);
        return row(id, "attack-175", length, 0, "seven-eighths", pump, tip, (double) Math.round(METER * flow(tip)));
    }

    /** A reading on leader hose with attack hose behind it. */
    static Row chain(String id, double leader, double attack, double tip) {
        List<Stretch> hose = List.of(
                new Stretch("leader-3", Length.ofFeet(leader)), new Stretch("attack-175", Length.ofFeet(attack)));
        return attack(id, attack, tip).hose(hose).pump(pump(attack, leader, PIPING_K, tip));
    }

    /** Readings at each length and tip pressure. */
    static Row[] attacks(double[] lengths, double... tips) {
        List<Row> rows = new ArrayList<>();
        for (double length : lengths) {
            for (double tip : tips) {
                rows.add(attack(String.valueOf(rows.size() + 1), length, tip));
            }
        }
        return rows.toArray(new Row[0]);
    }
}
