package org.hosewright.hydraulics.line;

import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** A run of one hose in a line, and the appliance it ends in.
 *
 * @param hose the hose
 * @param length how much of it; above 0
 * @param rise its end above its start, negative downhill
 * @param end the appliance it ends in, where there is one
 */
public record Run(Hose hose, Length length, Length rise, Optional<Appliance> end) {
    public Run {
        Numbers.requirePositive("length of " + hose.id(), length.metres());
    }

    public Run(Hose hose, Length length, Length rise) {
        this(hose, length, rise, Optional.empty());
    }

    public Run withLength(Length length) {
        return new Run(hose, length, rise, end);
    }

    public Run withRise(Length rise) {
        return new Run(hose, length, rise, end);
    }

    /** The same run of a hose that loses so many times as much; a hose that follows a law stays as it is. */
    Run withLossTimes(double times) {
        Known<HoseLoss> known = hose.loss();
        Known<HoseLoss> loss = new Known<>(new HoseLoss(known.value().r() * times), known.standardError());
        return hose.law().isPresent() ? this : new Run(hose.withLoss(loss), length, rise, end);
    }

    /** Whole sections that this run takes from the rig. */
    public int sections() {
        return (int) Math.ceil(length.metres() / hose.section().metres() * (1 - 1e-9));
    }

    /** Loss of the hose at one cubic metre a second [Pa s2/m6]; 0 where it follows another law than the square. */
    double resistance() {
        return hose.law().isPresent() ? 0 : hose.loss().value().r() * length.metres();
    }

    /** Pressure that lifts the water from its start to its end [Pa]. */
    double lift_Pa() {
        return Constants.WATER_PA_PER_M * rise.metres();
    }
}
