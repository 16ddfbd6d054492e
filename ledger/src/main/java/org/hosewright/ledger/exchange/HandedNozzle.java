package org.hosewright.ledger.exchange;

import java.util.Optional;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.kit.Coupling;

/** The nozzle of a package that is handed over.
 *
 * @param name what its owner calls it
 * @param what what it is and how it is set, in words
 * @param flow what it is rated at
 * @param at tip pressure that gives that flow
 * @param coupling what it is coupled by, where its owner says so
 */
public record HandedNozzle(String name, String what, Flow flow, Pressure at, Optional<Coupling> coupling) {
    public HandedNozzle {
        Numbers.requirePositive("flow of " + name, flow.cubicMetresPerSecond());
        Numbers.requirePositive("tip pressure of " + name, at.pascals());
    }
}
