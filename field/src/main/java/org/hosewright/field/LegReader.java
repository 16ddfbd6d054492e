package org.hosewright.field;

import java.util.List;
import java.util.Optional;
import org.hosewright.field.json.Place;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.foam.Eductor;
import org.hosewright.hydraulics.foam.FoamMix;
import org.hosewright.hydraulics.foam.Proportioner;
import org.hosewright.hydraulics.lay.Damage;
import org.hosewright.hydraulics.lay.End;
import org.hosewright.hydraulics.lay.FloorOutlet;
import org.hosewright.hydraulics.lay.Leg;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.RatedPoint;

/** A leg: its {@code hose}, a {@code gate} or what is amiss with it, and the one thing that it ends in. */
final class LegReader {
    private static final List<String> ENDS =
            List.of("nozzle", "wye", "join", "monitor", "standpipe", "reducer", "eductor", "sprinklers", "open");

    private static final List<String> OUTLETS = List.of("reduces", "set", "restricts", "plain", "unknown");

    private LegReader() {}

    static Leg leg(Place at) {
        return at.as(place -> new Leg(
                place.find("hose").map(LineReader::runs).orElse(List.of()),
                end(place),
                place.findQuantity("gate", LegReader::loss),
                damage(place)));
    }

    private static PointLoss loss(String text) {
        return QuantityText.pointLoss(text).value();
    }

    private static Optional<Damage> damage(Place leg) {
        Optional<Place> burst = leg.find("burst");
        return burst.isPresent()
                ? burst.map(coupling -> coupling.as(place -> new Damage.Burst((int) place.number())))
                : leg.findQuantity("kink", LegReader::loss).map(Damage.Kink::new);
    }

    private static End end(Place leg) {
        String word = leg.one("end of a leg", ENDS);
        return leg.get(word).as(place -> end(word, place));
    }

    private static End end(String word, Place at) {
        return switch (word) {
            case "nozzle" -> outlet(at);
            case "wye" -> new End.Wye(appliance(at), legs(at.get("legs")));
            case "join" -> new End.Join(at.text());
            case "monitor" ->
                new End.Monitor(
                        appliance(at),
                        rise(at),
                        at.get("tips").list().stream().map(LegReader::outlet).toList());
            case "standpipe" -> standpipe(at);
            case "reducer" ->
                new End.Reducer(at.get("id").text(), at.quantity("holds", QuantityText::pressure), leg(at.get("leg")));
            case "eductor" -> eductor(at);
            case "sprinklers" ->
                End.Outlet.sprinklers(
                        at.get("id").text(),
                        at.quantity("k", QuantityText::flow),
                        (int) at.get("heads").number(),
                        isShut(at));
            default ->
                End.Outlet.hoseEnd(
                        at.get("id").text(), at.quantity("diameter", QuantityText::length), Optional.empty());
        };
    }

    private static List<Leg> legs(Place at) {
        return at.list().stream().map(LegReader::leg).toList();
    }

    private static Optional<Appliance> appliance(Place at) {
        return at.find("appliance").map(GearReader::appliance);
    }

    private static Length rise(Place at) {
        return at.findQuantity("rise", QuantityText::length).orElse(new Length(0));
    }

    private static boolean isShut(Place at) {
        return at.find("shut").map(Place::truth).orElse(false);
    }

    private static End.Outlet outlet(Place at) {
        return at.as(place ->
                new End.Outlet(place.get("id").text(), GearReader.nozzle(place), "", isShut(place), Optional.empty()));
    }

    private static End standpipe(Place at) {
        List<End.Floor> floors =
                at.get("floors").list().stream().map(LegReader::floor).toList();
        return new End.Standpipe(
                at.findQuantity("loss", LegReader::loss).orElse(PointLoss.NONE),
                rise(at),
                floors,
                at.findQuantity("posted", QuantityText::pressure));
    }

    private static End.Floor floor(Place at) {
        return at.as(
                place -> new End.Floor(place.get("id").text(), rise(place), outletOf(place), leg(place.get("leg"))));
    }

    /** A valve that {@code reduces}, one that is {@code set}, a plate that {@code restricts}; or {@code plain}, or {@code unknown}. */
    private static FloorOutlet outletOf(Place floor) {
        return switch (floor.one("outlet of a floor", OUTLETS)) {
            case "reduces" -> new FloorOutlet.FixedReducer(floor.quantity("reduces", QuantityText::pressure));
            case "set" -> new FloorOutlet.AdjustableReducer(floor.quantity("set", QuantityText::pressure));
            case "restricts" -> new FloorOutlet.Restrictor(floor.quantity("restricts", LegReader::loss));
            case "plain" -> new FloorOutlet.Plain();
            default -> new FloorOutlet.Unknown();
        };
    }

    private static End eductor(Place at) {
        RatedPoint rated = at.quantity("rated", QuantityText::ratedPoint);
        Proportioner made = new Proportioner(
                new Eductor(rated.at(), rated.flow()),
                at.quantity("back-pressure", QuantityText::ratio),
                new FoamMix(at.quantity("draws", QuantityText::ratio)),
                at.findQuantity("concentrate", QuantityText::volume));
        return new End.InlineEductor(at.get("id").text(), made, leg(at.get("leg")));
    }
}
