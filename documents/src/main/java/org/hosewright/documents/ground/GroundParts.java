package org.hosewright.documents.ground;

import java.util.List;
import java.util.Optional;
import org.hosewright.documents.drawing.MapPicture;
import org.hosewright.documents.matter.Photograph;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.press.Html;
import org.hosewright.ground.walk.Walk;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.walk.LineThere;
import org.hosewright.ledger.walk.MapShape;

/** Pieces that the papers about the ground share. */
final class GroundParts {
    /** Of drills on streets that are open. @source common practice */
    private static final List<String> OUTDOORS = List.of(
            "Ask the neighbours' leave before hose or water goes on their ground.",
            "Guard the hose and the crew against traffic; close the lane or set a watch.",
            "Spray on a road blinds drivers and freezes: keep the stream off it.");

    private static final int MOST_PICTURES = 3;

    private static final double MAP_WIDTH_mm = 88;
    private static final String MAP_SAYS =
            "The way on the company's own map: the pump a square, the ends of sections circles with their numbers.";

    private GroundParts() {}

    static Html section(String head, Html inside) {
        return inside.isEmpty()
                ? Html.NOTHING
                : Html.tag("div", Html.tag("h2", head), inside).in("section whole");
    }

    private static Html photographs(List<Photograph> photographs) {
        return Html.tag(
                        "div",
                        Html.all(photographs.stream()
                                .limit(MOST_PICTURES)
                                .map(GroundParts::photograph)
                                .toList()))
                .in("photographs");
    }

    private static Html photograph(Photograph photograph) {
        Html picture = Html.picture("data:image/jpeg;base64," + photograph.jpegBase64(), photograph.name());
        return Html.tag("div", picture, Html.tag("p", photograph.name()).in("caption"))
                .in("photograph");
    }

    /** A way on the company's own map.
     *
     * @param height on paper [mm]
     */
    static Html map(Walk way, List<MapShape> shapes, UnitSystem units, double height) {
        return Html.tag("div", MapPicture.of(way, shapes, units, new MapPicture.Size(MAP_WIDTH_mm, height), MAP_SAYS))
                .in("map");
    }

    /** The map, where there is one, the photographs beside it. */
    static Html place(Optional<Html> map, List<Photograph> photographs) {
        Html way = map.orElse(Html.NOTHING);
        return photographs.isEmpty() ? way : Html.all(way, photographs(photographs));
    }

    /** Cautions of a paper with those of drills on open streets. */
    static List<String> withOutdoors(List<String> own) {
        return java.util.stream.Stream.concat(own.stream(), OUTDOORS.stream()).toList();
    }

    static Html cautions(List<String> own) {
        return Parts.list(withOutdoors(own));
    }

    static Html attribution(List<String> attributions) {
        return attributions.isEmpty()
                ? Html.NOTHING
                : Html.tag("p", "Map data: " + String.join("; ", attributions) + ".")
                        .in("fine");
    }

    /** The first limit in words: what, and how much of it is used. */
    static String limit(LineThere line) {
        return line.tightest()
                .map(limit -> (limit.broken() ? "BROKEN: " : "") + limit(limit))
                .orElse("no limit is known");
    }

    static String limit(Limit limit) {
        return limit.what() + ", " + Math.round(100 * limit.used()) + " %";
    }

    static String holds(LineThere line, QuantityShown shown) {
        return line.isSafeAsOrdered() ? shown.withBand(line.flow()) : "NOT SAFE";
    }
}
