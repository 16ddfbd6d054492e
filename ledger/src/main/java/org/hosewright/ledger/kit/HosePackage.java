package org.hosewright.ledger.kit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;

/** A hose-and-nozzle package: one line as it lies on the rig, with what it is meant to do.
 *
 * @param id the company's name for it
 * @param engine id of the engine
 * @param discharge id of the discharge on it
 * @param hose chain in laying order; not empty
 * @param nozzle id of the nozzle
 * @param setting its setting; empty for the only one
 * @param crew people the company plans at the nozzle, where stated
 * @param target flow wanted, where stated
 * @param least flow below which it is not good enough, where stated
 * @param ordered pump pressure in force, where there is one
 */
public record HosePackage(
        String id,
        String engine,
        String discharge,
        List<Stretch> hose,
        String nozzle,
        String setting,
        OptionalInt crew,
        Optional<Flow> target,
        Optional<Flow> least,
        Optional<Pressure> ordered) {
    public HosePackage {
        hose = List.copyOf(hose);
    }
}
