package org.hosewright.documents.matter;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.profile.LineProfile;
import org.hosewright.ledger.walk.MapShape;
import org.hosewright.ledger.walk.WalkReport;

/** What a page is made from.
 *
 * @param company its name
 * @param name of the walk
 * @param report what the walk comes to
 * @param profile the line along it, where a package was chosen
 * @param photographs of the way
 * @param shapes of the company's own map
 * @param attributions of the map data of the company's layers
 */
public record WalkMatter(
        String company,
        String name,
        WalkReport report,
        Optional<LineProfile> profile,
        List<Photograph> photographs,
        List<MapShape> shapes,
        List<String> attributions) {
    public WalkMatter {
        photographs = List.copyOf(photographs);
        shapes = List.copyOf(shapes);
        attributions = List.copyOf(attributions);
    }
}
