package org.hosewright.field;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.field.json.Place;
import org.hosewright.hydraulics.equipment.Engine;
import org.hosewright.hydraulics.lay.Source;
import org.hosewright.hydraulics.lay.Supply;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.Temperature;
import org.hosewright.hydraulics.quantity.Unit;
import org.hosewright.hydraulics.supply.HydrantCurve;

/** What feeds an engine: {@code feeds}, each from one source over its {@code hose}, and the pressure to {@code keep}. */
final class SupplyReader {
    private SupplyReader() {}

    static Supply supply(Place at) {
        return at.as(place -> new Supply(
                place.get("feeds").list().stream().map(SupplyReader::feed).toList(),
                place.quantity("keep", QuantityText::pressure)));
    }

    private static Supply.Feed feed(Place at) {
        return at.as(place -> new Supply.Feed(
                source(place),
                List.of(new Supply.SupplyHose(
                        place.find("hose").map(LineReader::runs).orElse(List.of())))));
    }

    private static Source source(Place feed) {
        String word = feed.one("source of a supply", List.of("hydrant", "tank", "draft", "pumper"));
        return feed.get(word).as(at -> switch (word) {
            case "hydrant" -> hydrant(at);
            case "tank" -> tank(at);
            case "draft" -> draft(at);
            default -> pumper(at);
        });
    }

    private static Source hydrant(Place at) {
        return new Source.Hydrant(new HydrantCurve(
                at.quantity("static", QuantityText::pressure),
                at.quantity("residual", QuantityText::pressure),
                at.quantity("at", QuantityText::flow)));
    }

    private static Source tank(Place at) {
        return new Source.Tank(
                at.quantity("level", QuantityText::volume),
                at.findQuantity("loss", SupplyReader::loss).orElse(PointLoss.NONE),
                at.findQuantity("most", QuantityText::flow));
    }

    private static Source draft(Place at) {
        return new Source.Draft(
                at.quantity("lift", QuantityText::length),
                at.findQuantity("strainer", SupplyReader::loss).orElse(PointLoss.NONE),
                at.findQuantity("altitude", QuantityText::length).orElse(new Length(0)),
                at.findQuantity("temperature", QuantityText::temperature).orElse(Temperature.of(68, Unit.F)));
    }

    private static Source pumper(Place at) {
        Engine engine = new Engine(
                at.get("id").text(),
                at.findQuantity("rated", QuantityText::flow),
                at.findQuantity("ceiling", QuantityText::pressure),
                Optional.empty(),
                Map.of());
        return new Source.Pumper(
                engine,
                GearReader.discharge(at.get("discharge")),
                at.findQuantity("pump", QuantityText::pressure),
                supply(at.get("supply")));
    }

    private static PointLoss loss(String text) {
        return QuantityText.pointLoss(text).value();
    }
}
