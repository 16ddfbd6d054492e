package org.hosewright.evidence.calibration;

import static org.hosewright.evidence.calibration.NightWriter.row;

import java.util.List;
import org.hosewright.evidence.calibration.NightWriter.Row;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** The drill night of the invented Brindle Falls Fire Company: made with a hose of 9.19, piping of 2.06, a meter reading 1.06 of
 * the flow, and about 1 psi of scatter; reading 7 was planted 13 psi high.
 */
final class ExampleNight {
    private ExampleNight() {}

    /** The night with the tip gauge at a tap. */
    static NightWriter tapped(Tap tip) {
        return gear(tip).rows(rows().toArray(new Row[0]));
    }

    static List<Row> rows() {
        return List.of(
                row("1", "attack-175", 150, 0, "seven-eighths", 72, 40, 152),
                row("2", "attack-175", 150, 0, "seven-eighths", 90, 50, 170),
                row("3", "attack-175", 350, 0, "seven-eighths", 110, 40, 153),
                row("4", "attack-175", 350, 0, "seven-eighths", 138, 50, 171),
                row("5", "attack-175", 550, 8, "seven-eighths", 154, 40, 151),
                row("6", "attack-175", 550, 8, "seven-eighths", 189, 50, 169),
                row("7", "attack-175", 550, 8, "seven-eighths", 203, 50, 169),
                row("8", "attack-175", 750, 8, "seven-eighths", 190, 40, 153),
                row("9", "attack-175", 750, 8, "seven-eighths", 238, 50, 168));
    }

    static NightWriter gear(Tap tip) {
        return new NightWriter()
                .hose("attack-175", 15.5)
                .discharge("crosslay-1")
                .nozzle("seven-eighths", new SmoothBore(Length.ofInches(7.0 / 8), Pressure.ofPsi(50)), true)
                .gauge("gauge-a", 400, 0.005, new Tap.BeforePiping())
                .gauge("gauge-b", 200, 0.005, tip)
                .meter("meter-1", 0.05);
    }

    /** Level attack hose from crosslay-1 with the 7/8 in tip. */
    static Course level(double length_ft) {
        return new Course(
                List.of(new Stretch("attack-175", Length.ofFeet(length_ft))),
                "crosslay-1",
                new Length(0),
                "seven-eighths",
                "");
    }
}
