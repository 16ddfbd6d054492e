package org.hosewright.documents.matter;

import java.util.List;
import java.util.Optional;
import org.hosewright.ground.walk.Walk;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.stretch.KeptStretch;
import org.hosewright.ledger.stretch.StretchReport;
import org.hosewright.ledger.walk.MapShape;

/** What a sheet is made from.
 *
 * @param kit the kit that the report rests on
 * @param stretch as kept
 * @param report what it comes to
 * @param ordered the ordered pressure at the planned length in words, where an order in force has one
 * @param photographs of the place
 * @param way as drawn by hand with its sections, where it was
 * @param shapes of the company's own map
 * @param attributions of the map data of the company's layers
 * @param withPrivate true where private notes are to be printed
 */
public record StretchMatter(
        Kit kit,
        KeptStretch stretch,
        StretchReport report,
        Optional<String> ordered,
        List<Photograph> photographs,
        Optional<Walk> way,
        List<MapShape> shapes,
        List<String> attributions,
        boolean withPrivate) {
    public StretchMatter {
        photographs = List.copyOf(photographs);
        shapes = List.copyOf(shapes);
        attributions = List.copyOf(attributions);
    }
}
