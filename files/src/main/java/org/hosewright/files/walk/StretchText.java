package org.hosewright.files.walk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.ground.stretch.Slack;
import org.hosewright.ground.stretch.StairRule;
import org.hosewright.ground.stretch.Stairs;
import org.hosewright.ground.stretch.StretchPart;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.walk.EnteredRise;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.canonical.CanonicalJson;
import org.hosewright.ledger.stretch.KeptStretch;

/** A stretch as text: canonical JSON (RFC 8785), every length with its unit, positions as longitude and latitude. */
public final class StretchText {
    static final int FORMAT = 1;

    private final QuantityShown shown;

    private StretchText(QuantityShown shown) {
        this.shown = shown;
    }

    /** The text of a stretch.
     *
     * @param units that its lengths are written in
     */
    public static String write(KeptStretch stretch, UnitSystem units) {
        return CanonicalJson.text(new StretchText(QuantityShown.of(units)).tree(stretch));
    }

    /** The stretch that a text holds.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput it is not a stretch of this edition, and where it is not
     */
    public static KeptStretch read(String text) {
        return StretchReader.of(text);
    }

    private Map<String, Object> tree(KeptStretch stretch) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("format", FORMAT);
        tree.put("address", stretch.address());
        site(tree, stretch.site());
        tree.put("packages", stretch.packages());
        stretch.second().ifPresent(id -> tree.put("second", id));
        tree.put("parts", stretch.parts().stream().map(this::part).toList());
        stretch.stairs().ifPresent(stairs -> tree.put("stairs", stairs(stairs)));
        slack(tree, stretch.slack());
        tree.put("reserve", stretch.reserveSections());
        stretch.rise().ifPresent(rise -> tree.put(rise.direction().word(), rise(rise)));
        List<Object> laid = new ArrayList<>();
        stretch.laid()
                .forEach(once -> laid.add(Map.of("on", once.on().toString(), "used", exact(Known.of(once.used())))));
        tree.put("laid", laid);
        return tree;
    }

    private static void site(Map<String, Object> tree, KeptStretch.Site site) {
        tree.put("stands", site.stands());
        tree.put("way", site.way().stream().map(StretchText::position).toList());
        tree.put("pictures", site.pictures());
        tree.put("cautions", site.cautions());
        tree.put("private", site.privateNotes());
    }

    private static List<Double> position(Position position) {
        return List.of(position.longitude_deg(), position.latitude_deg());
    }

    private Map<String, Object> part(StretchPart part) {
        return Map.of("kind", part.kind().word(), "length", exact(part.length()), "says", part.says());
    }

    private Map<String, Object> stairs(Stairs stairs) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("climbed", stairs.climbed());
        tree.put("rule", stairs.rule().word());
        if (stairs.rule() instanceof StairRule.OwnLength own) {
            tree.put("each", exact(Known.of(own.each())));
        }
        return tree;
    }

    private void slack(Map<String, Object> tree, Slack slack) {
        bends(slack.corners(), exact(Known.of(slack.perCorner()))).ifPresent(corners -> tree.put("corners", corners));
        bends(slack.obstacles(), exact(Known.of(slack.perObstacle()))).ifPresent(each -> tree.put("obstacles", each));
    }

    private static Optional<Map<String, Object>> bends(int count, String each) {
        return count == 0 ? Optional.empty() : Optional.of(Map.of("count", count, "each", each));
    }

    private String rise(EnteredRise rise) {
        return exact(
                rise.standardError().metres() > 0
                        ? Known.of(rise.height(), rise.standardError())
                        : Known.of(rise.height()));
    }

    private String exact(Known<? extends Quantity> known) {
        return shown.fileText(known);
    }
}
