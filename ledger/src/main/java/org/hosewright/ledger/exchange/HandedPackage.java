package org.hosewright.ledger.exchange;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.ledger.order.OrderedLine;

/** A package that is handed over, with the figures that its owner ordered for it.
 *
 * @param line its figures, the gauge they are read on, and what they rest on; every one of them stands
 * @param hose in laying order; not empty
 * @param nozzle what its water leaves by
 * @param crew people planned at the nozzle, where its owner says so
 * @param target flow wanted, where its owner says so
 * @param least flow below which it is not good enough, where its owner says so
 */
public record HandedPackage(
        OrderedLine line,
        List<HandedHose> hose,
        HandedNozzle nozzle,
        OptionalInt crew,
        Optional<Flow> target,
        Optional<Flow> least) {
    public HandedPackage {
        hose = List.copyOf(hose);
        if (hose.isEmpty() || line.pressures().isEmpty()) {
            throw new InvalidInput("package", line.hosePackage(), "one with hose and at least one figure", "");
        }
    }

    public String name() {
        return line.hosePackage();
    }
}
