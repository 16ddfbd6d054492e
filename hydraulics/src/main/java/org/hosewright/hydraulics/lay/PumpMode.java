package org.hosewright.hydraulics.lay;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** How the pump answers when the lines take more or less. */
public sealed interface PumpMode {

    /** The governor holds the discharge pressure. */
    record Governor() implements PumpMode {}

    /** The engine keeps its speed: the pump slides along its curve through a point that was read.
     *
     * @param at pump pressure at that point
     * @param flow the flow there
     * @param rated rated capacity of the pump; above 0
     */
    record FixedSpeed(Pressure at, Flow flow, Flow rated) implements PumpMode {
        public FixedSpeed {
            Numbers.requirePositive("pump pressure at a fixed speed", at.pascals());
            Numbers.requireNotNegative("flow at a fixed speed", flow.cubicMetresPerSecond());
            Numbers.requirePositive("rated capacity of a pump at fixed speed", rated.cubicMetresPerSecond());
        }

        /** What is taken for granted of its curve, as a sentence. */
        public static String says(UnitSystem units) {
            return "A pump at a fixed speed is taken to add "
                    + QuantityShown.of(units).text(PumpSlide.FALL)
                    + " less at its rated flow than with nothing flowing: an estimate, since no curve of this pump is known.";
        }
    }
}
