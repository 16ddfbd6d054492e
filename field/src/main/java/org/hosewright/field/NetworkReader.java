package org.hosewright.field;

import org.hosewright.field.json.Place;
import org.hosewright.hydraulics.network.Network;
import org.hosewright.hydraulics.network.law.DarcyWeisbach;
import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.law.Power;
import org.hosewright.hydraulics.network.law.PumpGain;
import org.hosewright.hydraulics.network.law.Square;
import org.hosewright.hydraulics.network.law.Water;

/** A network in SI numbers: {@code nodes} with a head, a demand or neither, and {@code links} with a law each. */
final class NetworkReader {
    private NetworkReader() {}

    static Network network(Place at) {
        Network network = new Network();
        at.get("nodes").list().forEach(node -> node.as(place -> add(network, place)));
        at.get("links").list().forEach(link -> link.as(place -> join(network, place)));
        return network;
    }

    private static Network add(Network network, Place node) {
        String id = node.get("id").text();
        if (node.find("head_Pa").isPresent()) {
            return network.fixed(id, node.get("head_Pa").number());
        }
        network.free(id);
        return network.demand(id, node.find("demand_m3s").map(Place::number).orElse(0.0));
    }

    private static Network join(Network network, Place link) {
        Law law = law(link);
        boolean oneWay = link.find("oneWay").map(Place::truth).orElse(false);
        return network.link(
                link.get("id").text(), link.get("from").text(), link.get("to").text(), oneWay ? new OneWay(law) : law);
    }

    private static Law law(Place link) {
        if (link.find("square").isPresent()) {
            return new Square(link.get("square").number());
        }
        if (link.find("power").isPresent()) {
            Place of = link.get("power");
            return new Power(number(of, "r"), number(of, "n"), number(of, "m"));
        }
        if (link.find("pump").isPresent()) {
            Place of = link.get("pump");
            return new PumpGain(number(of, "shut_Pa"), number(of, "a"), number(of, "b"));
        }
        Place pipe = link.get("pipe");
        return new DarcyWeisbach(
                number(pipe, "length_m"),
                number(pipe, "diameter_m"),
                number(pipe, "roughness_m"),
                number(pipe, "fittings"),
                new Water(number(pipe, "density_kgm3"), number(pipe, "viscosity_m2s")));
    }

    private static double number(Place at, String key) {
        return at.get(key).number();
    }
}
