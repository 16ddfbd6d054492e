package org.hosewright.files.walk;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hosewright.files.json.JsonObject;
import org.hosewright.files.track.TrackFile;
import org.hosewright.ground.track.Track;
import org.hosewright.ground.walk.EnteredRise;
import org.hosewright.ground.walk.MeasuredLength;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.canonical.CanonicalJson;
import org.hosewright.ledger.walk.KeptWalk;

/** A kept walk as text: canonical JSON (RFC 8785) around the recorded file, which stays as it was given. */
public final class WalkText {
    private static final int FORMAT = 1;
    private static final Set<String> KEYS = Set.of(
            "format", "name", "package", "measured", "measuredWith", "couplings", "up", "down", "pictures", "track");

    private WalkText() {}

    /** The text of a walk.
     *
     * @param units that its lengths are written in
     */
    public static String write(KeptWalk walk, UnitSystem units) {
        QuantityShown shown = QuantityShown.of(units);
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("format", FORMAT);
        tree.put("name", walk.name());
        walk.hosePackage().ifPresent(id -> tree.put("package", id));
        walk.measured().ifPresent(length -> {
            tree.put("measured", shown.fileText(length));
            tree.put("measuredWith", walk.by().word());
        });
        if (walk.couplingsLaid()) {
            tree.put("couplings", MeasuredLength.By.HOSE_LAID.word());
        }
        if (!walk.pictures().isEmpty()) {
            tree.put("pictures", walk.pictures());
        }
        walk.rise().ifPresent(rise -> tree.put(rise.direction().word(), rise(shown, rise)));
        tree.put("track", walk.track());
        return CanonicalJson.text(tree);
    }

    /** The walk that a text holds.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput it is not a walk of this edition
     */
    public static KeptWalk read(String text) {
        JsonObject json = JsonObject.of(text, "walk").only(KEYS).edition(FORMAT);
        return new KeptWalk(
                json.text("name"),
                json.text("track"),
                json.findText("package"),
                json.findText("measured").map(KnownLength::of),
                json.findText("measuredWith").map(KnownLength::by).orElse(MeasuredLength.By.TAPE),
                json.has("pictures") ? json.texts("pictures") : List.of(),
                json.findText("couplings").map(KnownLength::ofHoseLaid).orElse(false),
                KnownLength.rise(json.findText("up"), json.findText("down")));
    }

    /** The track that a walk holds. */
    public static Track track(KeptWalk walk) {
        return TrackFile.read(walk.track().getBytes(StandardCharsets.UTF_8), walk.name());
    }

    private static String rise(QuantityShown shown, EnteredRise rise) {
        return shown.fileText(org.hosewright.hydraulics.quantity.Known.of(rise.height(), rise.standardError()));
    }
}
