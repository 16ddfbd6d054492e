package org.hosewright.field;

import java.util.Optional;
import org.hosewright.field.json.Place;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.HoseLaw;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.RatedPoint;
import org.hosewright.hydraulics.quantity.Ratio;

/** Equipment as a question describes it. */
final class GearReader {
    private GearReader() {}

    static Discharge discharge(Place at) {
        return at.as(place -> new Discharge(
                place.get("id").text(),
                place.findQuantity("size", QuantityText::length),
                place.findQuantity("loss", QuantityText::pointLoss)));
    }

    /** A hose by its {@code loss}, or by {@code hazen-williams} or {@code roughness} as in the company's files. */
    static Hose hose(Place at) {
        return at.as(place -> {
            String id = place.get("id").text();
            Length diameter = place.quantity("diameter", QuantityText::length);
            Length section = place.quantity("section", QuantityText::length);
            Optional<Pressure> test = place.findQuantity("test", QuantityText::pressure);
            Optional<HoseLaw> law = law(place);
            return law.isPresent()
                    ? Hose.by(law.get(), id, diameter, section, test)
                    : new Hose(id, diameter, section, place.quantity("loss", QuantityText::hoseLoss), test);
        });
    }

    private static Optional<HoseLaw> law(Place hose) {
        Optional<Place> smooth = hose.find("hazen-williams");
        return smooth.isPresent()
                ? smooth.map(c -> new HoseLaw.HazenWilliams(c.number()))
                : hose.findQuantity("roughness", QuantityText::length).map(HoseLaw.Roughness::new);
    }

    static Appliance appliance(Place at) {
        return at.as(place -> new Appliance(
                place.get("id").text(),
                loss(place),
                place.find("per").map(GearReader::per).orElse(Appliance.Per.TOTAL),
                place.findQuantity("rated", QuantityText::pressure)));
    }

    private static ApplianceLoss loss(Place place) {
        if (place.find("allow").isPresent()) {
            return new ApplianceLoss.Rule(
                    place.quantity("allow", QuantityText::pressure), place.quantity("from", QuantityText::flow));
        }
        return new ApplianceLoss.Quadratic(place.quantity("loss", QuantityText::pointLoss));
    }

    private static Appliance.Per per(Place at) {
        return at.text().equals("leg") ? Appliance.Per.LEG : Appliance.Per.TOTAL;
    }

    static Nozzle nozzle(Place at) {
        return at.as(place -> {
            Nozzle plain = Nozzle.of(place.get("id").text(), tip(place));
            Optional<Known<Ratio>> factor =
                    place.findQuantity("factor", QuantityText::ratio).map(Known::of);
            return new Nozzle(plain.id(), plain.settings(), place.findQuantity("most", QuantityText::pressure), factor);
        });
    }

    private static Tip tip(Place place) {
        if (place.find("bore").isPresent()) {
            return new SmoothBore(
                    place.quantity("bore", QuantityText::length), place.quantity("at", QuantityText::pressure));
        }
        if (place.find("rated").isPresent()) {
            RatedPoint rated = place.quantity("rated", QuantityText::ratedPoint);
            return new Fog(rated.flow(), rated.at());
        }
        return new Automatic(
                place.quantity("holds", QuantityText::pressure),
                place.quantity("from", QuantityText::flow),
                place.quantity("to", QuantityText::flow));
    }
}
