package org.hosewright.field;

import java.util.List;
import org.hosewright.field.json.Place;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityText;

/** A line: {@code discharge}, {@code hose} in laying order, {@code nozzle}. */
final class LineReader {
    private LineReader() {}

    static Line line(Place at) {
        return at.as(place -> new Line(
                GearReader.discharge(place.get("discharge")),
                runs(place.get("hose")),
                GearReader.nozzle(place.get("nozzle")),
                ""));
    }

    static List<Run> runs(Place at) {
        return at.list().stream().map(LineReader::run).toList();
    }

    private static Run run(Place at) {
        return at.as(place -> new Run(
                GearReader.hose(place),
                place.quantity("length", QuantityText::length),
                place.findQuantity("rise", QuantityText::length).orElse(new Length(0)),
                place.find("end").map(GearReader::appliance)));
    }
}
