package org.hosewright.field;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.field.json.Place;
import org.hosewright.hydraulics.lay.Joint;
import org.hosewright.hydraulics.lay.Lay;
import org.hosewright.hydraulics.lay.PumpMode;
import org.hosewright.hydraulics.quantity.QuantityText;

/** A lay: {@code lines}, each a {@code discharge} and a {@code leg}; with {@code joins}, {@code supply} and a {@code pump}
 * at fixed speed where there are such. A lay of lines alone may be their list.
 *
 * @validFor every piece that a lay file can hold; an engine that pumps to itself is not looked for
 */
final class LayReader {
    private LayReader() {}

    static Lay lay(Place at) {
        return at.as(place -> place.isList() ? new Lay(lines(place)) : whole(place));
    }

    private static Lay whole(Place lay) {
        Map<String, Joint> joins = new LinkedHashMap<>();
        lay.find("joins").ifPresent(all -> all.keys().forEach(name -> joins.put(name, joint(all.get(name)))));
        return new Lay(
                lines(lay.get("lines")),
                joins,
                lay.find("supply").map(SupplyReader::supply),
                lay.find("pump").map(LayReader::pump).orElse(new PumpMode.Governor()));
    }

    private static List<Lay.FromDischarge> lines(Place at) {
        return at.list().stream().map(LayReader::fromDischarge).toList();
    }

    private static Lay.FromDischarge fromDischarge(Place at) {
        return new Lay.FromDischarge(GearReader.discharge(at.get("discharge")), LegReader.leg(at.get("leg")));
    }

    private static Joint joint(Place at) {
        Optional<Place> siamese = at.find("appliance");
        return at.as(place -> new Joint(siamese.map(GearReader::appliance), LegReader.leg(place.get("leg"))));
    }

    private static PumpMode pump(Place at) {
        return at.as(place -> new PumpMode.FixedSpeed(
                place.quantity("at", QuantityText::pressure),
                place.quantity("flow", QuantityText::flow),
                place.quantity("rated", QuantityText::flow)));
    }
}
