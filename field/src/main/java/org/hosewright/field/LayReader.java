package org.hosewright.field;

import java.util.Optional;
import org.hosewright.field.json.Place;
import org.hosewright.hydraulics.lay.End;
import org.hosewright.hydraulics.lay.Lay;
import org.hosewright.hydraulics.lay.Leg;

/** A lay: a list of lines, each a {@code discharge} and a {@code leg} of hose that ends in a nozzle or a wye of legs. */
final class LayReader {
    private LayReader() {}

    static Lay lay(Place at) {
        return at.as(place ->
                new Lay(place.list().stream().map(LayReader::fromDischarge).toList()));
    }

    private static Lay.FromDischarge fromDischarge(Place at) {
        return new Lay.FromDischarge(GearReader.discharge(at.get("discharge")), leg(at.get("leg")));
    }

    private static Leg leg(Place at) {
        return at.as(place -> new Leg(LineReader.runs(place.get("hose")), end(place)));
    }

    private static End end(Place leg) {
        Optional<Place> wye = leg.find("wye");
        return wye.isPresent() ? wye.get().as(LayReader::wye) : outlet(leg.get("nozzle"));
    }

    private static End wye(Place at) {
        return new End.Wye(
                at.find("appliance").map(GearReader::appliance),
                at.get("legs").list().stream().map(LayReader::leg).toList());
    }

    private static End outlet(Place at) {
        boolean shut = at.find("shut").map(Place::truth).orElse(false);
        return new End.Outlet(at.get("id").text(), GearReader.nozzle(at), "", shut, Optional.empty());
    }
}
